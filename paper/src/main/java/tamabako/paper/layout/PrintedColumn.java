package tamabako.paper.layout;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tamabako.paper.figures.Cells;
import tamabako.paper.figures.PrintedNumber;
import tamabako.problems.Column;

/// The rows of a column as they stand on paper; an amount has its currency sign on the first row.
record PrintedColumn(String label, List<PrintedNumber> rows) {

    PrintedColumn {
        rows = List.copyOf(rows);
    }

    static PrintedColumn of(Numbered numbered) {
        Column column = (Column) numbered.problem();
        List<PrintedNumber> rows = new ArrayList<>();
        for (BigDecimal row : column.rows()) {
            Optional<String> unit = column.terms().unit().filter(currency -> rows.isEmpty());
            rows.add(PrintedNumber.of(row, unit));
        }
        return new PrintedColumn(numbered.label(), rows);
    }

    /// The widest figures up to the units, in parts of their size.
    double whole() {
        return rows.stream().mapToDouble(row -> Cells.width(row.whole())).max().orElseThrow();
    }

    /// The widest decimals, in parts of their size.
    double decimals() {
        return rows.stream().mapToDouble(row -> Cells.width(row.decimals())).max().orElseThrow();
    }

    PrintedNumber longestRow() {
        return rows.stream()
                .max(Comparator.comparingDouble(row -> Cells.width(row.figures())))
                .orElseThrow();
    }

    static int mostRows(List<PrintedColumn> columns) {
        return columns.stream().mapToInt(column -> column.rows().size()).max().orElseThrow();
    }

    static PrintedColumn longest(List<PrintedColumn> columns) {
        return columns.stream()
                .max(Comparator.comparingDouble(each -> Cells.width(each.longestRow().figures())))
                .orElseThrow();
    }
}
