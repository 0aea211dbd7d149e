package tamabako.records.roster;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The rows of one file of a OneRoster package, by its headings, which are exact.
///
/// @param file the name of the file
/// @param headings its headings
/// @param rows its rows
record NamedRows(String file, List<String> headings, List<Row> rows) {

    /// One row.
    ///
    /// @param line where it stands
    record Row(String file, int line, Map<String, String> cells) {

        /// What stands under a heading; blank where nothing does.
        String cell(String heading) {
            return cells.getOrDefault(heading, "");
        }

        Place place() {
            return Place.line(file, line);
        }
    }

    NamedRows {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /// The rows in `bytes`; empty where they are no CSV in UTF-8.
    static Optional<NamedRows> read(String file, byte[] bytes) {
        return Encodings.decode(bytes)
                .filter(decoded -> decoded.kind() == Read.Kind.CSV_UTF8)
                .map(decoded -> CsvGrid.read(decoded.text(), ','))
                .filter(grid -> grid.end().isEmpty() && !grid.lines().isEmpty())
                .map(grid -> of(file, grid.lines()));
    }

    private static NamedRows of(String file, List<Grid.Line> lines) {
        List<String> headings = lines.getFirst().cells().stream().map(String::strip).toList();
        List<Row> rows = new ArrayList<>();
        for (Grid.Line line : lines.subList(1, lines.size())) {
            Map<String, String> cells = new LinkedHashMap<>();
            for (int at = 0; at < Math.min(headings.size(), line.cells().size()); at++) {
                cells.put(headings.get(at), line.cells().get(at).strip());
            }
            rows.add(new Row(file, line.number(), cells));
        }
        return new NamedRows(file, headings, rows);
    }

    /// The first of these headings that it lacks, if it lacks one.
    Optional<String> lacks(List<String> wanted) {
        return wanted.stream().filter(heading -> !headings.contains(heading)).findFirst();
    }
}
