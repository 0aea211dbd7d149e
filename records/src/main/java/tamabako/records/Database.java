package tamabako.records;

import java.nio.file.Path;

/// Where a class book is kept.
public sealed interface Database {

    /// The embedded store: one file on this machine.
    record Embedded(Path file) implements Database {
        @Override
        public String toString() {
            return file.toString();
        }
    }

    /// A PostgreSQL database that a federation's copies of the program share.
    ///
    /// @param url as JDBC has it, such as `jdbc:postgresql://db.example:5432/classbook`, without
    ///   user or password
    /// @param user who is logged in
    /// @param password where the password is found
    record Server(String url, String user, Password password) implements Database {
        @Override
        public String toString() {
            return url.substring("jdbc:".length());
        }
    }

    /// Where a password is found. It never stands in an address or on a command line, where others
    /// could read it.
    sealed interface Password {

        /// The variable of the environment that is asked where nothing else is said.
        String USUAL_VARIABLE = "TAMABAKO_DATABASE_PASSWORD";

        /// The server asks for none.
        record None() implements Password {}

        /// In the environment variable of that name.
        record Variable(String name) implements Password {}

        /// In the first line of a file that only its owner can read.
        record InFile(Path file) implements Password {}
    }

    /// Whether both stand at the same place, whoever logs in.
    default boolean isSameAs(Database other) {
        return switch (this) {
            case Embedded(Path file) ->
                    other instanceof Embedded(Path there)
                            && file.toAbsolutePath()
                                    .normalize()
                                    .equals(there.toAbsolutePath().normalize());
            case Server(String url, _, _) ->
                    other instanceof Server(String there, _, _) && url.equals(there);
        };
    }

    /// The database that `written` names: `postgresql://user@host:5432/name`, or the path of a
    /// file.
    ///
    /// @throws RecordsFailure if it looks like an address and is none of PostgreSQL, or holds a
    ///   password
    static Database parse(String written, Password password) {
        return DatabaseAddress.read(written, password);
    }
}
