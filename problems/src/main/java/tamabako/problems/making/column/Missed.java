package tamabako.problems.making.column;

import java.math.BigDecimal;
import tamabako.frame.Technique;
import tamabako.problems.words.Sayable;

/// What of a made column does not meet what was asked, with the values. Rows are counted from 1.
public sealed interface Missed extends Sayable {

    @Override
    default String topic() {
        return "missed";
    }

    /// It has another number of rows.
    record RowCount(int rows, int asked) implements Missed {}

    /// A row has fewer or more digits, or more or fewer of them behind the point, than asked.
    record RowLength(int row, BigDecimal number) implements Missed {}

    /// The lengths of the rows do not add up, or do not fit the table of lengths.
    record LengthsTogether(int digits) implements Missed {}

    /// It has other than `least` to `most` minus rows.
    record MinusRows(int minusRows, int least, int most) implements Missed {
        @Override
        public String template() {
            return "missed.minus-rows-" + Bound.of(least, most);
        }
    }

    /// A row is taken that has to be added.
    record TakenRow(int row) implements Missed {}

    /// More minus rows follow one another than may.
    record MinusRun(int rows, int most) implements Missed {}

    /// Steps are done by a technique that is not allowed.
    record OtherTechnique(Technique technique, int times) implements Missed {}

    /// A technique occurs too seldom.
    record TooSeldom(Technique technique, int times, int least) implements Missed {}

    /// A technique occurs too often.
    record TooOften(Technique technique, int times, int most) implements Missed {}

    /// No carry or borrow runs on so far.
    record ShortCarries(int rods, int least) implements Missed {}

    /// A carry or borrow runs on too far.
    record LongCarries(int rods, int most) implements Missed {}

    /// It takes other than `least` to `most` strokes.
    record StrokeCount(int strokes, int least, int most) implements Missed {}

    /// A digit stands other than `least` to `most` times.
    record DigitCount(int digit, int times, int least, int most) implements Missed {}

    /// A row begins with the same digit as the one before.
    record SameLead(int row, int digit) implements Missed {}

    /// A row is the same number as an earlier one.
    record SameRow(int row, int earlier) implements Missed {}

    /// A row has only one digit.
    record OneDigit(int row, BigDecimal number) implements Missed {}

    /// A row counts up or down.
    record CountingRow(int row, BigDecimal number) implements Missed {}

    /// A digit stands where it stands in the row before.
    record SamePlace(int row, int digit) implements Missed {}

    /// All last digits are even.
    record EvenEndings() implements Missed {}

    /// Too many last digits are 0 or 5.
    record EndingsZeroOrFive(int times, int most) implements Missed {}

    /// The total is below zero after a row.
    record FellBelowZero(int row) implements Missed {}

    /// The total goes below zero so many times.
    record OtherDips(int times) implements Missed {}

    /// The answer is on the other side of zero.
    record OtherSide(BigDecimal answer) implements Missed {}

    /// The answer has other than `least` to `most` digits.
    record OtherLength(BigDecimal answer, int least, int most) implements Missed {
        @Override
        public String template() {
            return "missed.other-length-" + Bound.of(least, most);
        }
    }

    /// The answer ends in 0.
    record RoundAnswer(BigDecimal answer) implements Missed {}
}
