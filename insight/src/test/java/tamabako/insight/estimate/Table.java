package tamabako.insight.estimate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/// A table of check values, whose first lines name where they come from.
///
/// @param rows each row by the names of its columns
record Table(List<Map<String, String>> rows) {

    /// The table `src/test/vectors/estimate/name.csv`.
    static Table read(String name) {
        try {
            List<String> lines =
                    Files.readAllLines(Path.of("src", "test", "vectors", "estimate", name + ".csv"))
                            .stream()
                            .filter(line -> !line.startsWith("#"))
                            .toList();
            List<String> names = List.of(lines.getFirst().split(",", -1));
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", -1);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < cells.length; i++) {
                    row.put(names.get(i), cells[i]);
                }
                rows.add(row);
            }
            return new Table(rows);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the check values " + name + ".", failed);
        }
    }

    /// The rows whose column holds that.
    Table where(String column, String holds) {
        return where(row -> holds.equals(row.get(column)));
    }

    Table where(Predicate<Map<String, String>> holds) {
        return new Table(rows.stream().filter(holds).toList());
    }

    /// One column as text.
    List<String> words(String column) {
        return rows.stream()
                .map(row -> {
                    String cell = row.get(column);
                    if (cell == null) {
                        throw new IllegalArgumentException("No column " + column + ".");
                    }
                    return cell;
                })
                .toList();
    }

    /// One column as numbers.
    List<Double> numbers(String column) {
        return words(column).stream().map(Double::valueOf).toList();
    }

    /// One column as whole numbers.
    List<Integer> wholes(String column) {
        return words(column).stream().map(Integer::valueOf).toList();
    }

    /// The only number of one column.
    double number(String column) {
        if (rows.size() != 1) {
            throw new IllegalStateException("%d rows, not one.".formatted(rows.size()));
        }
        return numbers(column).getFirst();
    }
}
