package tamabako.problems.effort;

import java.math.BigDecimal;
import java.util.List;
import tamabako.frame.CarryOrder;
import tamabako.frame.walk.PackedNumber;
import tamabako.frame.walk.PackedStep;
import tamabako.frame.walk.PackedTrace;
import tamabako.problems.Column;

/// Counts columns.
final class ColumnCount {

    /// The most digits of a row for which the total surely finds its rods in a packed trace, loans
    /// included.
    private static final int MOST_DIGITS = PackedNumber.MOST_DIGITS - 3;

    private static final int MOST_ROWS = 100;

    private ColumnCount() {}

    static HandCount of(Column column) {
        List<BigDecimal> rows = column.rows();
        int places = 0;
        int whole = 1;
        for (BigDecimal row : rows) {
            places = Math.max(places, row.scale());
            whole = Math.max(whole, row.precision() - row.scale());
        }
        return places + whole > MOST_DIGITS || rows.size() > MOST_ROWS
                ? TraceCount.of(column)
                : count(rows, places);
    }

    private static HandCount count(List<BigDecimal> rows, int places) {
        PackedTrace trace = new PackedTrace(places, CarryOrder.REMOVE_THEN_CARRY);
        for (BigDecimal row : rows) {
            trace.put(PackedNumber.pack(row, places));
        }
        HandCount count = new HandCount();
        for (int i = 0; i < trace.size(); i++) {
            int step = trace.step(i);
            count.step(PackedStep.technique(step), PackedStep.before(step), PackedStep.after(step));
        }
        return count;
    }
}
