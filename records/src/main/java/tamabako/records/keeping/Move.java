package tamabako.records.keeping;

import java.util.Map;
import tamabako.records.ClassBook;
import tamabako.records.Reason;
import tamabako.records.RecordsFailure;
import tamabako.records.WholeBook;

/// Moves a class book from one database to another.
public final class Move {

    private Move() {}

    /// Copies everything in `from` to `to`, whole or not at all, and reads it back to see that it
    /// is the same. What is in `from` stays there.
    ///
    /// @param replace whether what `to` holds may go
    /// @param watching is told what goes by, row by row
    /// @return how many rows each table of `to` has now
    /// @throws RecordsFailure if both are one book, `to` is not empty and may not be replaced, or
    ///   what was read back is not the same
    public static Map<String, Long> all(
            ClassBook from, ClassBook to, boolean replace, WholeBook watching) {
        if (from.database().isSameAs(to.database())) {
            throw new RecordsFailure(new Reason.SameBook(from.database().toString()));
        }
        return to.tables().fill(replace, taker -> from.tables().read(new Both(taker, watching)));
    }
}
