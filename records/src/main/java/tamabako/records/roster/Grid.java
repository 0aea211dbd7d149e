package tamabako.records.roster;

import java.util.List;
import java.util.Optional;

/// Cells in lines, whatever file they came in.
///
/// @param lines the lines that are not blank
/// @param end what stopped the reading before the end of the file, if something did
record Grid(List<Line> lines, Optional<Told> end) {

    /// One line.
    ///
    /// @param number which line of the file it begins at, from 1
    record Line(int number, List<String> cells) {
        Line {
            cells = List.copyOf(cells);
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    Grid {
        lines = List.copyOf(lines);
    }
}
