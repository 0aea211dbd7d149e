package tamabako.problems.making;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.frame.column.ColumnWork;
import tamabako.testkit.Draw;

/// What the tests of makers ask about columns, answered by the work of the hand.
final class Columns {

    private Columns() {}

    /// The techniques of all steps: the first row is set and asks for none.
    static Set<Technique> techniques(List<BigDecimal> rows) {
        Set<Technique> used = EnumSet.noneOf(Technique.class);
        for (Step step : ColumnWork.work(rows, Setup.COMMON).trace().steps()) {
            used.add(step.technique());
        }
        return used;
    }

    /// Whether the total is below zero after some row.
    static boolean goesBelowZero(List<BigDecimal> rows) {
        BigDecimal total = BigDecimal.ZERO;
        for (BigDecimal row : rows) {
            total = total.add(row);
            if (total.signum() < 0) {
                return true;
            }
        }
        return ColumnWork.work(rows, Setup.COMMON).trace().steps().stream()
                .anyMatch(step -> step.cause() instanceof Cause.Loan);
    }

    /// Any set of techniques, the empty one included.
    static Set<Technique> drawTechniques(Draw draw) {
        Set<Technique> drawn = EnumSet.noneOf(Technique.class);
        for (Technique technique : Technique.values()) {
            if (draw.chance(1, 2)) {
                drawn.add(technique);
            }
        }
        return drawn;
    }
}
