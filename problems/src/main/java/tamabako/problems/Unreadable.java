package tamabako.problems;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tamabako.problems.words.ProblemWords;
import tamabako.problems.words.Sayable;

/// Says that something written cannot be read as a problem or an attempt. The [#reason()] names
/// what was written and what is expected; [#message(Locale)] tells it to people.
public final class Unreadable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /// The most characters that are shown of what was written.
    private static final int MOST_SHOWN = 40;

    private final transient Reason reason;
    private final String field;

    public Unreadable(Reason reason) {
        this("", reason);
    }

    /// @param field the path of the field that is wrong, see [#field()]; empty for none
    public Unreadable(String field, Reason reason) {
        super(message(field, reason, Locale.ENGLISH));
        this.field = field;
        this.reason = reason;
    }

    /// What was wrong, with its values.
    public Reason reason() {
        return reason;
    }

    /// The path of the field that is wrong, such as `problem.rows.2`, where one is to blame. The
    /// items of a list are counted from 1.
    public Optional<String> field() {
        return field.isEmpty() ? Optional.empty() : Optional.of(field);
    }

    /// The character that is wrong, counted from 1, where one is to blame: in the field if there is
    /// one, else in the line.
    public OptionalInt position() {
        return reason.position() > 0 ? OptionalInt.of(reason.position()) : OptionalInt.empty();
    }

    /// What, where and how to mend it, in the language of `locale`.
    public String message(Locale locale) {
        return message(field, reason, locale);
    }

    /// The same fault seen from the field `outer` that holds what was read.
    public Unreadable inside(String outer) {
        return new Unreadable(field.isEmpty() ? outer : outer + "." + field, reason);
    }

    /// `written` as a message shows it: cut where it is long.
    public static String shown(String written) {
        if (written.length() <= MOST_SHOWN) {
            return written;
        }
        boolean splits = Character.isHighSurrogate(written.charAt(MOST_SHOWN - 1));
        return written.substring(0, splits ? MOST_SHOWN - 1 : MOST_SHOWN) + "…";
    }

    private static String message(String field, Reason reason, Locale locale) {
        ProblemWords words = ProblemWords.of(locale);
        String what = words.say(reason);
        return field.isEmpty()
                ? what
                : words.say("unreadable.in-field", Map.of("field", field, "what", what));
    }

    /// What was wrong. `shown` is what was written, cut where it is long; a `position` is a
    /// character counted from 1, 0 where it is not known.
    public sealed interface Reason extends Sayable {

        @Override
        default String topic() {
            return "unreadable";
        }

        /// The character that is wrong, counted from 1; 0 where none is to blame.
        default int position() {
            return 0;
        }

        /// Not JSON from this character on.
        record NotJson(int position) implements Reason {}

        /// JSON, but no object.
        record NotAnObject(String shown) implements Reason {}

        /// More values nested in each other than any problem has.
        record TooDeep(int limit) implements Reason {}

        /// Longer than any problem is.
        record LineTooLong(int length, int limit) implements Reason {}

        /// A key that the object has twice.
        record KeyTwice(String key) implements Reason {}

        /// A key that is not known here.
        record UnknownKey(String key, List<String> known) implements Reason {}

        /// A key that has to be there, with an example of how it is written.
        record MissingKey(String key, String example) implements Reason {}

        /// A value of another sort than this key has, with an example.
        record OtherValue(String shown, String example) implements Reason {}

        /// A word that is not among those that this key may have.
        record UnknownWord(String shown, List<String> known) implements Reason {}

        /// No currency of ISO 4217.
        record UnknownUnit(String shown) implements Reason {}

        /// A character that is no digit where a number is written.
        record NotADigit(String shown, String figure, int position) implements Reason {}

        /// No digit at all where a number is written.
        record NoNumber(String shown) implements Reason {}

        /// A comma that does not part off three digits.
        record CommaMisplaced(String shown, int position) implements Reason {}

        /// A number with more digits than a frame has rods.
        record NumberTooLong(String shown, int limit) implements Reason {}

        /// A JSON number that may have been cut when it was read.
        record NotExact(String shown) implements Reason {}

        /// A whole number outside of its range, or no whole number.
        record OutOfRange(String shown, int least, int most) implements Reason {}

        /// No time in seconds, or more of them than a day has.
        record NotSeconds(String shown, int most) implements Reason {}

        /// A text longer than is kept.
        record TextTooLong(int length, int limit) implements Reason {}

        /// No point in time of ISO 8601 with its offset.
        record NotATime(String shown) implements Reason {}

        /// So many digits answered in less time than any hand needs.
        record TooFast(String shown, int digits) implements Reason {}

        /// So many strokes of the fingers in less time than any hand needs.
        record TooFastForHand(String shown, int strokes) implements Reason {}

        /// More running totals than the column has rows.
        record MoreSubtotals(int subtotals, int rows) implements Reason {}

        /// Running totals of a problem that has none.
        record NoSubtotals(String kind) implements Reason {}

        /// A column without rows.
        record NoRows() implements Reason {}

        /// More rows than a column may have.
        record TooManyRows(int rows, int limit) implements Reason {}

        /// A product of more or fewer than two factors.
        record NotTwoFactors(int factors) implements Reason {}

        /// Division by zero.
        record ZeroDivisor(String dividend) implements Reason {}

        /// A root of a number below zero.
        record NegativeRadicand(String shown) implements Reason {}

        /// An empty line where a problem should be.
        record EmptyLine() implements Reason {}

        /// A character that has no place in a line.
        record NoPlaceFor(String figure, int position) implements Reason {}

        /// A sign that no number follows.
        record NumberMissing(int position) implements Reason {}

        /// A second sign right after a sign.
        record SecondSign(String figure, int position) implements Reason {}

        /// A sign of another kind of problem than the line began with.
        record OtherKind(String figure, int position) implements Reason {}

        /// No CSV from this line on.
        record NotCsv() implements Reason {}

        /// A column of a CSV file that is not known.
        record UnknownColumn(String column, List<String> known) implements Reason {}

        /// A cell beyond the columns that the first line names.
        record CellOutside(String shown) implements Reason {}

        /// More numbers than such a problem has.
        record TooManyNumbers(int numbers, int limit) implements Reason {}

        /// No XML from this character of the line on.
        record NotXml(int position) implements Reason {}

        /// A document type, which an item never needs and which may hide what is read.
        record DocumentType() implements Reason {}

        /// XML that holds no item.
        record NoItem() implements Reason {}

        /// An item that asks for no sum.
        record NoSumInItem(String shown) implements Reason {}

        /// An item whose right answer is not the answer of its sum.
        record OtherAnswer(String shown, String right) implements Reason {}

        /// More than two numbers multiplied or divided in one line.
        record TwoNumbersOnly(String figure, int position) implements Reason {}
    }
}
