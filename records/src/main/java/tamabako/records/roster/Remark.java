package tamabako.records.roster;

import tamabako.problems.words.Sayable;

/// What there is to tell about a roster: why a file or a line cannot be taken, or what was left out
/// of it. [RosterWords] says it to people.
public sealed interface Remark extends Sayable {

    @Override
    default String topic() {
        return "remark";
    }

    /// The file is longer than any roster.
    record TooBig(int megabytes) implements Remark {}

    /// The file has more lines than any roster.
    record TooManyLines(int most) implements Remark {}

    /// There is nothing in the file.
    record NothingInIt() implements Remark {}

    /// The file is of the old kind of spreadsheet.
    record OldSpreadsheet() implements Remark {}

    /// The file is none that rosters come in.
    record NoRoster() implements Remark {}

    /// The letters of the file are in an encoding that is not known here.
    record OddEncoding() implements Remark {}

    /// No line of headings was found.
    record NoHeadings() implements Remark {}

    /// Two columns have headings of one meaning.
    record ColumnTwice(String other) implements Remark {}

    /// A quotation mark is opened and not closed, or closed too early.
    record BrokenQuote() implements Remark {}

    /// A column that has no place in the class book is left out.
    record ColumnLeftOut(String heading) implements Remark {}

    /// There are more cells than headings.
    record TooManyCells(int cells, int columns) implements Remark {}

    /// A pupil without a name.
    record NoName() implements Remark {}

    /// A pupil without a group.
    record NoGroup() implements Remark {}

    /// A cell is longer than the class book takes.
    record TooLong(int characters, int most) implements Remark {}

    /// A cell holds something that is no letter: a control character, or the sign for a lost one.
    record OddLetter(String code) implements Remark {}

    /// A spreadsheet left the name of a mistake in a cell.
    record SheetMistake(String written) implements Remark {}

    /// What was written is no year of birth.
    record NoYear(String written) implements Remark {}

    /// A whole date was given, of which the year is kept.
    record OnlyYearKept() implements Remark {}

    /// What was written is no language that the program speaks.
    record NoLanguage(String written, String known) implements Remark {}

    /// What was written is neither yes nor no.
    record NeitherYesNorNo(String written) implements Remark {}

    /// What was written is no whole number from `least` to `most`.
    record NoPercent(String written, int least, int most) implements Remark {}

    /// An earlier line has the same roster number.
    record SameIdAbove(String id, int line) implements Remark {}

    /// An earlier line is the same pupil.
    record SamePupilAbove(String name, int line) implements Remark {}

    /// Several pupils in the book could be meant.
    record SeveralMeant(String name, String group) implements Remark {}

    /// Several pupils in the book have that roster number.
    record SeveralWithId(String id) implements Remark {}

    /// A pupil of that name is in another group, and stays there.
    record SameNameElsewhere(String name, String group) implements Remark {}

    /// A file of a OneRoster package is missing.
    record FileMissing(String file) implements Remark {}

    /// A OneRoster package of another version.
    record OtherVersion(String version) implements Remark {}

    /// A OneRoster package that only tells changes.
    record OnlyChanges(String file) implements Remark {}

    /// A column that OneRoster requires is missing.
    record HeadingMissing(String heading) implements Remark {}

    /// A line refers to something that is in no file.
    record NotThere(String what, String id) implements Remark {}

    /// A pupil of several classes, of whom the first is taken.
    record SeveralClasses(String name, String taken) implements Remark {}

    /// A user that the school's system has switched off.
    record SwitchedOff(String name) implements Remark {}

    /// Users who are in no class as pupils.
    record InNoClass(int users) implements Remark {}
}
