package tamabako.records.table;

import java.util.List;

/// A list with a title and named columns.
///
/// @param title what the list is of
/// @param columns the names of its columns
/// @param rows each with as many texts as there are columns
public record BookTable(String title, List<String> columns, List<List<String>> rows) {

    public BookTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "%d columns, and a row of %d: %s"
                                .formatted(columns.size(), row.size(), row));
            }
        }
    }
}
