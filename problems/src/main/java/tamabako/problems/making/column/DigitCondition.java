package tamabako.problems.making.column;

/// What a column asks of the digits of its rows. Common practice of those who set papers, no
/// published source.
public sealed interface DigitCondition extends Condition {

    /// Each of the digits 0 to 9 stands `least` to `most` times in the rows.
    record DigitsEach(int least, int most) implements DigitCondition {}

    /// Rows that follow one another begin with different digits.
    record LeadsDiffer() implements DigitCondition {}

    /// At most so many rows are the same number as an earlier one, whether added or taken.
    record RowsDiffer(int alike) implements DigitCondition {

        /// No two rows are the same number.
        public RowsDiffer() {
            this(0);
        }

        @Override
        public String template() {
            return alike == 0 ? "condition.rows-differ" : "condition.few-rows-alike";
        }
    }

    /// No row of two digits or more has only one digit, such as 777.
    record NoRepeatedDigit() implements DigitCondition {}

    /// No row of three digits or more counts up or down, such as 123 or 987.
    record NoCounting() implements DigitCondition {}

    /// No digit stands in the same place of two rows that follow one another.
    record PlacesDiffer() implements DigitCondition {}

    /// The last digits of the rows are not all even, and at most so many are 0 or 5.
    record LastDigits(int mostZerosAndFives) implements DigitCondition {}
}
