package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Optional;
import tamabako.problems.Column;

/// Some rows of a column that are worked from one total to the next, as a table of their own.
final class Part {

    private Part() {}

    /// The slips of rows `from` (counted from 0) up to but not including `to`, begun on a frame
    /// that shows `start`; the answer is what then stands on the frame. Empty where the numbers are
    /// too long.
    static Optional<EventTable> of(Column column, int from, int to, BigDecimal start) {
        int places = ProblemSlips.places(column);
        BigDecimal most =
                column.rows().stream().map(BigDecimal::abs).reduce(start.abs(), BigDecimal::add);
        if (Scaled.of(most, places).isEmpty() || Scaled.of(start, places).isEmpty()) {
            return Optional.empty();
        }
        long[] all =
                column.rows().stream()
                        .mapToLong(row -> Scaled.of(row, places).orElseThrow().units())
                        .toArray();
        long[] rows = new long[1 + to - from];
        rows[0] = Scaled.of(start, places).orElseThrow().units();
        long answer = rows[0];
        for (int i = from; i < to; i++) {
            rows[1 + i - from] = all[i];
            answer += all[i];
        }
        Events events = new Events();
        new ColumnSlips(FastColumn.from(rows, places, from - 1), all, -places, events).add();
        events.workIsDone();
        new WrittenSlips(10 * answer, places + 1, events).add();
        return Optional.of(
                EventTable.ofPart(column, BigDecimal.valueOf(answer, places), places + 1, events));
    }
}
