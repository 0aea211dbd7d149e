package tamabako.records;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/// One table of the class book, as the database itself describes it.
///
/// @param name its name
/// @param columns its columns in their order
/// @param key the names of the columns that tell its rows apart
/// @param above the tables that its rows refer to
record Table(String name, List<Column> columns, List<String> key, Set<String> above) {

    /// One column.
    ///
    /// @param text whether it holds texts, and not whole numbers
    record Column(String name, boolean text) {}

    Table {
        columns = List.copyOf(columns);
        key = List.copyOf(key);
        above = Set.copyOf(above);
    }

    /// The names of its columns.
    List<String> columnNames() {
        return columns.stream().map(Column::name).toList();
    }

    /// Asks for `wanted` columns of every row, in the order of the key, letter by letter.
    ///
    /// @param letters the database's name for an order of texts by their bytes
    String selecting(List<String> wanted, String letters) {
        String order =
                columns.stream()
                        .filter(column -> key.contains(column.name()))
                        .map(column ->
                                quoted(column.name())
                                        + (column.text() ? " collate " + letters : ""))
                        .collect(Collectors.joining(", "));
        return "select %s from %s order by %s".formatted(list(wanted), quoted(name), order);
    }

    /// Puts one row in: a question mark for each of `wanted`.
    String inserting(List<String> wanted) {
        String places = String.join(", ", wanted.stream().map(_ -> "?").toList());
        return "insert into %s (%s) values (%s)".formatted(quoted(name), list(wanted), places);
    }

    /// Takes every row out.
    String deleting() {
        return "delete from " + quoted(name);
    }

    /// Counts the rows.
    String counting() {
        return "select count(*) from " + quoted(name);
    }

    private static String list(List<String> names) {
        return String.join(", ", names.stream().map(Table::quoted).toList());
    }

    private static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
