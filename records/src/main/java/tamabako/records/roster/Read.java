package tamabako.records.roster;

import java.util.List;
import tamabako.problems.words.Sayable;

/// What came of reading a file.
public sealed interface Read {

    /// The pupils of a roster.
    ///
    /// @param kind what sort of file it is
    /// @param entries the lines that could be read
    /// @param wrong the lines that could not
    /// @param notices what else there is to tell
    record Roster(Kind kind, List<Entry> entries, List<Told> wrong, List<Told> notices)
            implements Read {
        public Roster {
            entries = List.copyOf(entries);
            wrong = List.copyOf(wrong);
            notices = List.copyOf(notices);
        }
    }

    /// No roster at all, and why.
    record Unreadable(Told why) implements Read {}

    /// A sort of file.
    enum Kind implements Sayable {
        CSV_UTF8,
        CSV_UTF16,
        CSV_SHIFT_JIS,
        XLSX,
        ONE_ROSTER;

        @Override
        public String topic() {
            return "kind";
        }
    }

    /// The file as a whole cannot be read.
    static Unreadable unreadable(Remark why) {
        return new Unreadable(new Told(Place.WHOLE, why));
    }
}
