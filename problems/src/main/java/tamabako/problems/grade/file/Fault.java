package tamabako.problems.grade.file;

import java.util.List;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.grade.Span;
import tamabako.problems.words.Sayable;

/// What is wrong in a ladder file. A `key` is the word before the colon, `shown` what was written,
/// cut where it is long, `example` how it could be written.
public sealed interface Fault extends Sayable {

    @Override
    default String topic() {
        return "ladder";
    }

    /// No YAML from here on.
    record NotYaml() implements Fault {}

    /// A file without any keys.
    record NothingThere() implements Fault {}

    /// A longer file than any ladder needs.
    record TooLong(int length, int limit) implements Fault {}

    /// More values nested in each other than any ladder has.
    record TooDeep(int limit) implements Fault {}

    /// Something else where keys with values belong.
    record NotKeys(String key, String example) implements Fault {}

    /// A colon of full width, or one without a space behind it, which parts off no key.
    record ColonWithoutSpace(String shown) implements Fault {}

    /// Something else where a list belongs.
    record NotAList(String key, String example) implements Fault {}

    /// A list with no items, or too many.
    record NotSoMany(String key, int items, int most) implements Fault {}

    /// A list or keys where one value belongs.
    record NotOneValue(String key, String example) implements Fault {}

    /// A key that is not known here.
    record UnknownKey(String key, List<String> known) implements Fault {}

    /// A key that stood already, on line `before`.
    record KeyTwice(String key, int before) implements Fault {}

    /// A key that has to be there.
    record MissingKey(String key, String example) implements Fault {}

    /// Two keys of which only one may be there.
    record NotTogether(String key, String other) implements Fault {}

    /// A key that means nothing without another.
    record NeedsKey(String key, String other, String example) implements Fault {}

    /// A word that is not among those that this key may have.
    record UnknownWord(String key, String shown, List<String> known) implements Fault {}

    /// No whole number in the range.
    record NotWhole(String key, String shown, int least, int most) implements Fault {}

    /// No whole number, and no range of them, within bounds.
    record NotASpan(String key, String shown, int least, int most) implements Fault {}

    /// No time, or one of more than a day.
    record NotATime(String key, String shown) implements Fault {}

    /// Neither yes nor no.
    record NotYesOrNo(String key, String shown) implements Fault {}

    /// A text that is empty or too long.
    record NotAText(String key, int length, int most) implements Fault {}

    /// A name with other characters than small letters, digits and hyphens.
    record NotAName(String key, String shown) implements Fault {}

    /// No code of a language.
    record NotALanguage(String shown) implements Fault {}

    /// A text in other languages, but not in English.
    record EnglishMissing(String key) implements Fault {}

    /// No currency of ISO 4217.
    record NotACurrency(String shown) implements Fault {}

    /// A name that something else goes by already, on line `before`.
    record NameTwice(String key, String shown, int before) implements Fault {}

    /// A name of something that the file does not have.
    record NothingOfThatName(String key, String shown, List<String> known) implements Fault {}

    /// A number of rows that is not that of the table of lengths.
    record OtherRows(int rows, int table) implements Fault {}

    /// Digits of a whole column that its rows do not come to.
    record OtherJi(int ji, int rows, Span reach) implements Fault {}

    /// Digits in all that the two numbers do not come to.
    record OtherInAll(Span inAll, String first, Span firstDigits, String second, Span secondDigits)
            implements Fault {}

    /// More problems than the batch has.
    record MoreThanThere(String key, int asked, int there) implements Fault {}

    /// More problems than one half of the batch has, or of its mixed ones.
    record MoreThanHalf(String key, String half, int asked, int there) implements Fault {}

    /// More answers below zero than mixed columns.
    record MoreBelowZero(int asked, int mixed) implements Fault {}

    /// Techniques that are required and not allowed.
    record RequiredNotAllowed(Set<Technique> required) implements Fault {}

    /// Fewer leaves than a problem takes.
    record PadTooThin(int leaves, int padLeaves) implements Fault {}

    /// A time for a section where there is one for the whole paper.
    record TimeTwice() implements Fault {}

    /// A section without a time where others have one.
    record TimeMissing(String example) implements Fault {}

    /// None, or more than one, of the ways to pass.
    record NotOnePass(List<String> known) implements Fault {}

    /// A pass mark above what can be reached.
    record PassTooHigh(String key, int asked, int full) implements Fault {}

    /// A rank that does not stand above the one before it.
    record RankNotHigher(String rank, int points, int before) implements Fault {}

    /// A choice of as many sections as there are, or more.
    record NoChoice(int choose, int there) implements Fault {}
}
