package tamabako.records;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;

/// All that the class book holds as tables and rows, for those who copy the whole of it. Which
/// tables there are is asked of the database, so that nothing is forgotten.
public final class Tables {

    /// Tables whose rows are true on one computer and for a while only: they are not copied.
    static final Set<String> STAYING = Set.of("sign_in");

    private final Door door;
    private final Database database;

    Tables(Door door, Database database) {
        this.door = door;
        this.database = database;
    }

    /// How many rows there are in all.
    public long rows() {
        return door.ask(book -> rows(book, tables(book)));
    }

    /// Which migration was the last one, such as 8.
    public int version() {
        return door.ask(book ->
                book
                        .createQuery(
                                "select version from flyway_schema_history where version is not null")
                        .mapTo(String.class)
                        .list()
                        .stream()
                        .mapToInt(Integer::parseInt)
                        .max()
                        .orElse(0));
    }

    /// Hands everything to `taker`, as it was at one moment, each table after those it refers to
    /// and each row in the order of its key.
    public void read(WholeBook taker) {
        door.still(book ->
                tables(book).forEach(table -> read(book, table, table.columnNames(), taker)));
    }

    /// Fills the book with what `source` hands over, and reads it back to see that every row is
    /// there and the same; all in one transaction, so that nothing is half written.
    ///
    /// @param replace whether what the book holds may go; a demo class goes anyway
    /// @return how many rows each table has now
    /// @throws RecordsFailure if the book holds something and may not be replaced, or if what was
    ///   read back is not the same
    /// @throws IllegalArgumentException if a row does not fit the tables
    public Map<String, Long> fill(boolean replace, Consumer<WholeBook> source) {
        Map<String, Long> counts = new LinkedHashMap<>();
        door.tell(book -> {
            List<Table> tables = tables(book);
            clear(book, tables, replace);
            Map<String, Table> byName = new LinkedHashMap<>();
            tables.forEach(table -> byName.put(table.name(), table));
            Filling filling = new Filling(book, byName);
            Map<String, List<String>> columns = new LinkedHashMap<>();
            source.accept(noting(columns, filling));
            filling.flush();
            compare(filling.tally(), readBack(book, tables, columns));
            counts.putAll(filling.tally().counts());
        });
        door.cleanUp();
        return counts;
    }

    private void clear(Handle book, List<Table> tables, boolean replace) {
        tables.stream()
                .filter(table -> table.columnNames().contains("demo"))
                .forEach(table -> book.execute(table.deleting() + " where demo = 1"));
        long rows = rows(book, tables);
        if (rows > 0 && !replace) {
            throw new RecordsFailure(new Reason.NotEmpty(database.toString(), rows));
        }
        tables.reversed().forEach(table -> book.execute(table.deleting()));
    }

    private static WholeBook noting(Map<String, List<String>> columns, WholeBook then) {
        return new WholeBook() {
            @Override
            public void table(String name, List<String> wanted) {
                columns.put(name, List.copyOf(wanted));
                then.table(name, wanted);
            }

            @Override
            public void row(String line) {
                then.row(line);
            }
        };
    }

    private Tally readBack(Handle book, List<Table> tables, Map<String, List<String>> columns) {
        Tally tally = new Tally();
        for (Table table : tables) {
            read(book, table, columns.getOrDefault(table.name(), table.columnNames()), tally);
        }
        return tally;
    }

    private static void compare(Tally came, Tally found) {
        Map<String, String> wanted = came.digests();
        Map<String, String> there = found.digests();
        for (String table : there.keySet()) {
            boolean isSame =
                    wanted.containsKey(table)
                            ? there.get(table).equals(wanted.get(table))
                            : found.count(table) == 0;
            if (!isSame) {
                throw new RecordsFailure(
                        new Reason.NotTheSame(table, came.count(table), found.count(table)));
            }
        }
    }

    private void read(Handle book, Table table, List<String> columns, WholeBook taker) {
        taker.table(table.name(), columns);
        book.createQuery(table.selecting(columns, letters()))
                .setFetchSize(1_000)
                .map((row, _) -> RowLine.of(row, columns.size()))
                .forEach(taker::row);
    }

    /// What each database calls an order of texts by their bytes.
    private String letters() {
        return switch (database) {
            case Database.Embedded _ -> "binary";
            case Database.Server _ -> "\"C\"";
        };
    }

    private static long rows(Handle book, List<Table> tables) {
        return tables.stream()
                .mapToLong(table -> book.createQuery(table.counting()).mapTo(Long.class).one())
                .sum();
    }

    private static List<Table> tables(Handle book) {
        try {
            List<Table> tables = new ArrayList<>(TableCatalogue.read(book.getConnection()));
            tables.removeIf(table -> STAYING.contains(table.name()));
            return tables;
        } catch (SQLException failed) {
            throw new RecordsFailure(new Reason.NotRead(), failed);
        }
    }
}
