package tamabako.records;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/// Asks a database which tables it has, so that one added later is never forgotten.
final class TableCatalogue {

    private static final Set<Integer> TEXTS =
            Set.of(Types.VARCHAR, Types.CHAR, Types.LONGVARCHAR, Types.CLOB);

    private final DatabaseMetaData tables;
    private final String schema;

    private TableCatalogue(Connection connection) throws SQLException {
        this.tables = connection.getMetaData();
        // The embedded store has no schemas.
        this.schema = String.valueOf(connection.getSchema());
    }

    /// Every table but the migrations' own, each after those that it refers to.
    static List<Table> read(Connection connection) throws SQLException {
        TableCatalogue catalogue = new TableCatalogue(connection);
        List<Table> found = new ArrayList<>();
        for (String name : catalogue.names()) {
            found.add(catalogue.table(name));
        }
        return inOrder(found);
    }

    private Set<String> names() throws SQLException {
        Set<String> names = new TreeSet<>();
        try (ResultSet rows = tables.getTables(null, place(), "%", new String[] {"TABLE"})) {
            while (rows.next()) {
                names.add(rows.getString("TABLE_NAME"));
            }
        }
        names.removeIf(name -> name.startsWith("flyway_") || name.startsWith("sqlite_"));
        return names;
    }

    private Table table(String name) throws SQLException {
        List<Table.Column> columns = new ArrayList<>();
        try (ResultSet rows = tables.getColumns(null, place(), name, "%")) {
            while (rows.next()) {
                boolean text = TEXTS.contains(rows.getInt("DATA_TYPE"));
                columns.add(new Table.Column(rows.getString("COLUMN_NAME"), text));
            }
        }
        Set<String> key = new TreeSet<>();
        try (ResultSet rows = tables.getPrimaryKeys(null, place(), name)) {
            while (rows.next()) {
                key.add(rows.getString("COLUMN_NAME"));
            }
        }
        Set<String> above = new HashSet<>();
        try (ResultSet rows = tables.getImportedKeys(null, place(), name)) {
            while (rows.next()) {
                above.add(rows.getString("PKTABLE_NAME"));
            }
        }
        if (key.isEmpty()) {
            throw new IllegalStateException("The table " + name + " needs a primary key.");
        }
        return new Table(name, columns, List.copyOf(key), above);
    }

    @SuppressWarnings("NullAway") // what JDBC takes for "no schema" is null
    private String place() {
        return schema.equals("null") ? null : schema;
    }

    private static List<Table> inOrder(List<Table> tables) {
        Set<String> names = new LinkedHashSet<>();
        List<Table> ordered = new ArrayList<>();
        List<Table> left = new ArrayList<>(tables);
        while (!left.isEmpty()) {
            Table next =
                    left.stream()
                            .filter(table -> names.containsAll(table.above()))
                            .findFirst()
                            .orElseThrow(() ->
                                    new IllegalStateException(
                                            "These tables refer to each other in a ring: " + left));
            names.add(next.name());
            ordered.add(next);
            left.remove(next);
        }
        return ordered;
    }
}
