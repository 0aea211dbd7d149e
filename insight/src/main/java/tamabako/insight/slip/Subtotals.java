package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.problems.marking.Mark;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;

/// The running totals that a pupil wrote on the way, and after which row each was written.
///
/// As many as rows, or one less, stand one after each row; fewer are taken to part the column
/// evenly.
///
/// @param column the column
/// @param totals what was written, in their order
/// @param rows after how many rows each was written; ascending, at most all rows
record Subtotals(Column column, List<BigDecimal> totals, List<Integer> rows) {

    Subtotals {
        totals = List.copyOf(totals);
        rows = List.copyOf(rows);
    }

    /// The totals `written`; empty if there are none, more than rows, or one that is no number.
    static Optional<Subtotals> of(Column column, List<String> written) {
        int all = column.rows().size();
        if (written.isEmpty() || written.size() > all) {
            return Optional.empty();
        }
        List<BigDecimal> totals = new ArrayList<>();
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            Optional<BigDecimal> read = read(written.get(i));
            if (read.isEmpty()) {
                return Optional.empty();
            }
            totals.add(read.get());
            boolean everyRow = written.size() >= all - 1;
            rows.add(everyRow ? i + 1 : (i + 1) * all / (written.size() + 1));
        }
        return Optional.of(new Subtotals(column, totals, rows));
    }

    /// A number as it would be read in an answer.
    private static Optional<BigDecimal> read(String written) {
        Column zero = new Column("", List.of(BigDecimal.ZERO), Terms.PLAIN);
        return switch (Marker.mark(zero, written, WritingRules.EASY)) {
            case Mark.Wrong(BigDecimal read, _) -> Optional.of(read);
            case Mark.WrongForm(BigDecimal read, _) -> Optional.of(read);
            case Mark.Right _ -> Optional.of(BigDecimal.ZERO);
            case Mark.Empty _, Mark.Unclear _ -> Optional.empty();
        };
    }
}
