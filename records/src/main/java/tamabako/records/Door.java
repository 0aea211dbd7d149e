package tamabako.records;

import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/// The one door to the tables: whatever goes through it is one transaction, whole or not at all.
/// What is asked and told inside [#whole] belongs to the same transaction.
final class Door {

    private final Jdbi database;
    private final Database kept;

    /// @param kept what the tables are kept in
    Door(Jdbi database, Database kept) {
        this.database = database;
        this.kept = kept;
    }

    /// Reads.
    <T> T ask(Function<Handle, T> question) {
        try {
            return database.inTransaction(question::apply);
        } catch (JdbiException failed) {
            throw new RecordsFailure(new Reason.NotRead(), failed);
        }
    }

    /// Reads much, all of it as it was at one moment, whatever others write meanwhile.
    void still(Consumer<Handle> reading) {
        try {
            database.useTransaction(TransactionIsolationLevel.REPEATABLE_READ, reading::accept);
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

    /// Empties the journal of the embedded store, in which what was erased would still stand. It
    /// waits where a reader is at work, and then the next one that cleans up does it.
    void cleanUp() {
        if (kept instanceof Database.Embedded) {
            alone(book -> book.createQuery("pragma wal_checkpoint(truncate)").mapToMap().list());
        }
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
