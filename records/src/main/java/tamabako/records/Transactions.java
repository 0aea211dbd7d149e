package tamabako.records;

import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/// Every reading and writing of the class book, whole or not at all.
final class Transactions {

    private final Jdbi database;

    Transactions(Jdbi database) {
        this.database = database;
    }

    <T> T ask(Function<Handle, T> question) {
        try {
            return database.inTransaction(question::apply);
        } catch (JdbiException failed) {
            throw new RecordsFailure("The class book cannot be read.", failed);
        }
    }

    void tell(Consumer<Handle> change) {
        try {
            database.useTransaction(change::accept);
        } catch (JdbiException failed) {
            throw new RecordsFailure(
                    "The class book cannot be written; nothing was changed.", failed);
        }
    }
}
