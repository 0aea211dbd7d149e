package tamabako.desk.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tamabako.desk.opening.OpenDesk;
import tamabako.records.ClassBook;
import tamabako.records.Database;
import tamabako.records.Reason;
import tamabako.records.RecordsFailure;

/// The options that say which class book is meant: a file in a folder, or a database.
final class BookPlace {

    @Mixin private DataFolder data = new DataFolder();

    @Option(
            names = "--database",
            paramLabel = "ADDRESS",
            description =
                    "The class book in PostgreSQL, such as postgresql://user@host:5432/name, or in"
                            + " a file. It goes before --data.")
    private Optional<String> database = Optional.empty();

    @Option(
            names = "--database-password-file",
            paramLabel = "FILE",
            description =
                    "The file whose first line is the password of the database; without it the"
                            + " variable TAMABAKO_DATABASE_PASSWORD is asked.")
    private Optional<Path> passwordFile = Optional.empty();

    /// Where the book is.
    ///
    /// @throws RecordsFailure if the address is none
    Database database() {
        return database.map(address -> at(address, passwordFile))
                .orElseGet(() -> new Database.Embedded(OpenDesk.bookIn(data.path())));
    }

    /// The folder that only its owner should read, where the book is kept in the usual place.
    Optional<Path> folder() {
        return database.isPresent() ? Optional.empty() : Optional.of(data.path());
    }

    /// Whether the book is there; a database is taken to be.
    boolean isThere() {
        return isThere(database());
    }

    private static boolean isThere(Database database) {
        return switch (database) {
            case Database.Embedded(Path file) -> Files.exists(file);
            case Database.Server _ -> true;
        };
    }

    /// Opens the book, which must be there.
    ///
    /// @throws RecordsFailure if it is not, or cannot be opened
    ClassBook openExisting() {
        return existing(database());
    }

    /// The database of that address, with its password in `file` or in the environment.
    static Database at(String address, Optional<Path> file) {
        Database.Password password =
                file.<Database.Password>map(Database.Password.InFile::new)
                        .orElseGet(BookPlace::fromEnvironment);
        return Database.parse(address, password);
    }

    /// Opens a book that must be there.
    static ClassBook existing(Database database) {
        if (!isThere(database)) {
            throw new RecordsFailure(new Reason.NoBook(database.toString()));
        }
        return ClassBook.open(database);
    }

    private static Database.Password fromEnvironment() {
        return System.getenv(Database.Password.USUAL_VARIABLE) == null
                ? new Database.Password.None()
                : new Database.Password.Variable(Database.Password.USUAL_VARIABLE);
    }
}
