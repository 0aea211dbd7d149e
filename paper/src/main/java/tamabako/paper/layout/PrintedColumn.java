package tamabako.paper.layout;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tamabako.paper.figures.Cells;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Column;

/// The rows of a column as they stand on paper; an amount has its currency sign on the first row.
///
/// @param cues what the caller says before each row; empty for the pupil
/// @param answer the answer in the box; empty for the pupil
record PrintedColumn(String label, List<PrintedNumber> rows, List<String> cues, String answer) {

    PrintedColumn {
        rows = List.copyOf(rows);
        cues = List.copyOf(cues);
    }

    static PrintedColumn of(Numbered numbered) {
        Column column = (Column) numbered.problem();
        List<PrintedNumber> rows = new ArrayList<>();
        for (BigDecimal row : column.rows()) {
            Optional<String> unit = column.terms().unit().filter(currency -> rows.isEmpty());
            rows.add(PrintedNumber.of(row, unit));
        }
        return new PrintedColumn(numbered.label(), rows, List.of(), "");
    }

    /// The same for the caller: with what is said where adding turns to taking or back, and with
    /// the answer. After "hiite wa" all rows that follow are taken, up to "kuwaete" (Wikibooks in
    /// Japanese, on yomiagezan).
    static PrintedColumn called(Numbered numbered, PrintWords words) {
        PrintedColumn seen = of(numbered);
        List<String> cues = new ArrayList<>();
        int sign = 1;
        for (BigDecimal row : ((Column) numbered.problem()).rows()) {
            boolean turns = row.signum() != 0 && row.signum() != sign;
            sign = turns ? -sign : sign;
            cues.add(turns ? words.say(sign < 0 ? "call.take" : "call.add") : "");
        }
        return new PrintedColumn(
                seen.label(), seen.rows(), cues, PrintedAnswer.of(numbered).value());
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
