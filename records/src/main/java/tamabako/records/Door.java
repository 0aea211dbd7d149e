package tamabako.records;

import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/// The one door to the tables: whatever goes through it is one transaction, whole or not at all.
/// What is asked and told inside [#whole] belongs to the same transaction.
final class Door {

    private final Jdbi database;

    Door(Jdbi database) {
        this.database = database;
    }

    /// Reads.
    <T> T ask(Function<Handle, T> question) {
        try {
            return database.inTransaction(question::apply);
        } catch (JdbiException failed) {
            throw new RecordsFailure(new Reason.NotRead(), failed);
        }
    }

    /// Writes.
    void tell(Consumer<Handle> change) {
        try {
            database.useTransaction(change::accept);
        } catch (JdbiException failed) {
            throw new RecordsFailure(new Reason.NotWritten(), failed);
        }
    }

    /// Several readings and writings in one transaction.
    void whole(Runnable changes) {
        tell(_ -> changes.run());
    }

    /// Outside of any transaction, for what cannot be in one.
    void alone(Consumer<Handle> change) {
        try {
            database.useHandle(change::accept);
        } catch (JdbiException failed) {
            throw new RecordsFailure(new Reason.NotWritten(), failed);
        }
    }
}
