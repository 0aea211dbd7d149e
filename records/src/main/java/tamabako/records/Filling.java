package tamabako.records;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/// Puts rows into the tables, several hundred at a time, and keeps the tally of what came.
final class Filling implements WholeBook {

    private static final int AT_A_TIME = 500;

    private final Handle book;
    private final Map<String, Table> tables;
    private final Tally tally = new Tally();
    private int columns;
    private Optional<PreparedBatch> batch = Optional.empty();

    Filling(Handle book, Map<String, Table> tables) {
        this.book = book;
        this.tables = tables;
    }

    @Override
    public void table(String name, List<String> wanted) {
        flush();
        Table table = tables.get(name);
        if (table == null
                || Set.copyOf(wanted).size() != wanted.size()
                || !table.columnNames().containsAll(wanted)) {
            throw new IllegalArgumentException(
                    "The class book has no table %s with the columns %s.".formatted(name, wanted));
        }
        batch = Optional.of(book.prepareBatch(table.inserting(wanted)));
        columns = wanted.size();
        tally.table(name, wanted);
    }

    @Override
    public void row(String line) {
        ArrayNode row = RowLine.parse(line, columns);
        PreparedBatch rows =
                batch.orElseThrow(() -> new IllegalArgumentException("A row of no table."));
        RowLine.bind(row, rows);
        rows.add();
        tally.row(row.toString());
        if (rows.size() >= AT_A_TIME) {
            rows.execute();
        }
    }

    /// Puts in what is not in yet.
    void flush() {
        batch.filter(rows -> rows.size() > 0).ifPresent(PreparedBatch::execute);
    }

    /// What came.
    Tally tally() {
        return tally;
    }
}
