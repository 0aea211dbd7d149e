package tamabako.records;

import tamabako.problems.words.Sayable;

/// Why the class book could not be opened, read or written. [RecordsWords] says it to people.
public sealed interface Reason extends Sayable {

    @Override
    default String topic() {
        return "why";
    }

    /// The folder of the embedded store cannot be made.
    record NoFolder(String folder) implements Reason {}

    /// The file or database is there and is no class book, or may not be written.
    record NotOpened(String database) implements Reason {}

    /// The book was written by a newer program.
    record TooNew(String database) implements Reason {}

    /// No server answers at that address.
    record NoServer(String database) implements Reason {}

    /// The server does not let this user in with this password.
    record NotLetIn(String database, String user) implements Reason {}

    /// The server keeps texts in letters that do not reach for every language.
    record NoUnicode(String database, String encoding) implements Reason {}

    /// The password is nowhere to be found.
    record NoPassword(String place) implements Reason {}

    /// A password stands in the address, where others can read it.
    record PasswordInAddress() implements Reason {}

    /// What was written names no database that can be used.
    record NoSuchDatabase(String written) implements Reason {}

    /// The grade that kept papers are of cannot be read from the ladder kept with them.
    record PapersNotRead(String papers, String ladder, String grade) implements Reason {}

    /// Reading failed.
    record NotRead() implements Reason {}

    /// Writing failed; nothing was changed.
    record NotWritten() implements Reason {}

    /// The book that was to be filled holds something already.
    record NotEmpty(String database, long rows) implements Reason {}

    /// After copying, the two books were not the same; nothing was changed.
    record NotTheSame(String table, long here, long there) implements Reason {}

    /// Both books are one and the same.
    record SameBook(String database) implements Reason {}

    /// There is no class book where one was looked for.
    record NoBook(String database) implements Reason {}

    /// The file is no backup of a class book.
    record NoBackup(String file) implements Reason {}

    /// A backup cannot be opened with this passphrase, or was damaged.
    record WrongPassphrase() implements Reason {}

    /// A backup that is not encrypted was cut short or damaged.
    record DamagedBackup(String file) implements Reason {}

    /// A backup was made by a newer program.
    record NewerBackup(String file) implements Reason {}

    /// A backup is encrypted, and no passphrase was given.
    record NeedsPassphrase(String file) implements Reason {}

    /// A passphrase is too short to keep anyone out.
    record ShortPassphrase(int least) implements Reason {}
}
