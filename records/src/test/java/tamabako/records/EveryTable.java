package tamabako.records;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;

/// Puts rows into every table that the migrations made, whatever it means, so that a test of
/// copying sees a table that was added yesterday.
final class EveryTable {

    /// Letters that are easily spoilt: other scripts, an emoji, line ends, quotes, blanks, tabs.
    private static final List<String> TEXTS =
            List.of("葵", "O'Brien \"x\"", "one\r\ntwo\t", "é\uD83E\uDDEE ", "\\n=1+1", "ー〜①");

    private EveryTable() {}

    /// How many rows each table gets.
    static final int ROWS = TEXTS.size();

    static void fill(ClassBook book) {
        book.door()
                .tell(handle -> {
                    try {
                        for (Table table : TableCatalogue.read(handle.getConnection())) {
                            fill(handle, table);
                        }
                    } catch (SQLException failed) {
                        throw new IllegalStateException(failed);
                    }
                });
    }

    private static void fill(Handle handle, Table table) throws SQLException {
        Map<String, String> above = above(handle.getConnection(), table.name());
        for (int row = 0; row < ROWS; row++) {
            var batch = handle.prepareBatch(table.inserting(table.columnNames()));
            int place = 0;
            for (Table.Column column : table.columns()) {
                if (above.containsKey(column.name())) {
                    batch.bind(place++, key(above.getOrDefault(column.name(), ""), row));
                } else if (table.key().equals(List.of(column.name())) && column.text()) {
                    batch.bind(place++, key(table.name(), row));
                } else if (column.text()) {
                    batch.bind(place++, column.name() + " " + row + " " + TEXTS.get(row));
                } else {
                    batch.bind(place++, row % 2);
                }
            }
            batch.add().execute();
        }
    }

    private static String key(String table, int row) {
        return table + "-" + (char) ('a' + row) + TEXTS.get(row).strip();
    }

    private static Map<String, String> above(Connection connection, String table)
            throws SQLException {
        Map<String, String> above = new HashMap<>();
        DatabaseMetaData tables = connection.getMetaData();
        try (ResultSet rows = tables.getImportedKeys(null, null, table)) {
            while (rows.next()) {
                above.put(rows.getString("FKCOLUMN_NAME"), rows.getString("PKTABLE_NAME"));
            }
        }
        return above;
    }

    /// The names of all tables as the database's own catalogue lists them.
    static Set<String> names(ClassBook book) {
        String asking =
                switch (book.database()) {
                    case Database.Embedded _ ->
                            "select name from sqlite_master where type = 'table'";
                    case Database.Server _ ->
                            "select table_name from information_schema.tables"
                                    + " where table_schema = 'public'";
                };
        List<String> names =
                book.door().ask(handle -> handle.createQuery(asking).mapTo(String.class).list());
        return new TreeSet<>(names);
    }

    /// Every row of every table, each with the name of its table before it.
    static List<String> rows(ClassBook book) {
        List<String> rows = new ArrayList<>();
        book.tables()
                .read(
                        new WholeBook() {
                            private String table = "";

                            @Override
                            public void table(String name, List<String> columns) {
                                table = name + columns;
                            }

                            @Override
                            public void row(String line) {
                                rows.add(table + line);
                            }
                        });
        return rows;
    }
}
