package tamabako.problems.marking;

import java.math.BigDecimal;
import tamabako.problems.words.Sayable;

/// What became of a written answer. There is no partial credit: only [Right] counts.
public sealed interface Mark extends Sayable {

    @Override
    default String topic() {
        return "mark";
    }

    /// Whether the answer counts.
    default boolean isRight() {
        return this instanceof Right;
    }

    /// Right in value and form.
    record Right() implements Mark {}

    /// The value, or the remainder, is another one.
    ///
    /// @param read the number that was read, without its remainder
    record Wrong(BigDecimal read, Fault fault) implements Mark {}

    /// The value is right, and the form is not; it does not count.
    ///
    /// @param read the number that was read
    /// @param form the first fault of form from the left
    record WrongForm(BigDecimal read, Form form) implements Mark {}

    /// Nothing was written.
    record Empty() implements Mark {}

    /// No number can be read.
    ///
    /// @param shown what was written, cut where it is long
    record Unclear(String shown) implements Mark {}

    /// What is wrong with a value.
    sealed interface Fault extends Sayable {

        @Override
        default String topic() {
            return "fault";
        }

        /// Another value than the right one.
        record OtherValue(BigDecimal read) implements Fault {}

        /// The value is right, and there is a remainder that was not written.
        record RemainderMissing() implements Fault {}

        /// The value is right, and the remainder is another one.
        record OtherRemainder(BigDecimal remainder) implements Fault {}
    }

    /// What is wrong with a form. Source: JCCI's rules for writing answers, where no other is
    /// named.
    sealed interface Form extends Sayable {

        @Override
        default String topic() {
            return "form";
        }

        /// More than three whole digits without a comma.
        record CommaMissing() implements Form {}

        /// A comma that does not part off three whole digits.
        record CommaMisplaced() implements Form {}

        /// A zero at the end of the decimals.
        record TrailingZero() implements Form {}

        /// A zero before the first whole digit. Common practice, no published source.
        record LeadingZero() implements Form {}

        /// A point that nothing follows, where no amount is asked for.
        record PointAtEnd() implements Form {}

        /// A closing mark where no amount is asked for.
        record ClosingMark() implements Form {}

        /// A unit behind the number.
        record UnitBehind(String unit) implements Form {}

        /// A unit that was not asked for.
        record OtherUnit(String unit) implements Form {}

        /// A plus sign. Common practice, no published source.
        record PlusSign() implements Form {}

        /// A minus sign before zero. Common practice, no published source.
        record MinusZero() implements Form {}

        /// Written on two lines or downward.
        record SeveralLines() implements Form {}

        /// A remainder where a rounded answer is asked for. Common practice, no published source.
        record RemainderNotAsked() implements Form {}
    }
}
