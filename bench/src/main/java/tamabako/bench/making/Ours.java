package tamabako.bench.making;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.ReadyMaker;
import tamabako.problems.making.column.Drawing;
import tamabako.problems.making.column.Search;
import tamabako.problems.making.column.Way;
import tamabako.problems.making.draw.Draws;

/// Tamabako's own makers.
final class Ours {

    private static final int AT_ONCE = 1000;

    private final ReadyMaker maker;
    private List<Problem> made = List.of();
    private int next;

    private Ours(ColumnWish wish) {
        this.maker = ReadyMaker.of(wish);
    }

    /// Columns as teachers get them: problems of [ReadyMaker], a thousand unlike ones at a time.
    static Peer maker(Task task) {
        return new Peer("ReadyMaker", new Ours(task.wish())::take);
    }

    private long[] take(long number) {
        if (next == made.size()) {
            made = made(maker.make(AT_ONCE, number, Set.of()));
            next = 0;
        }
        return rows((Column) made.get(next++));
    }

    /// The rows only, each column for itself.
    static Peer drawing(Task task) {
        Drawing drawing = drawing(task.wish());
        Draws draws = new Draws(1);
        long[] rows = new long[task.wish().rows()];
        return new Peer(
                "drawing alone",
                _ -> draw(drawing, draws, rows));
    }

    static Drawing drawing(ColumnWish wish) {
        Way way = Search.of(wish.shape(), wish.signs(), wish.conditions());
        if (way instanceof Way.Drawn(Drawing drawing)) {
            return drawing;
        }
        throw new IllegalStateException("There is no way to draw " + wish + ": " + way);
    }

    /// The next column, in `rows`.
    static long[] draw(Drawing drawing, Draws draws, long[] rows) {
        while (!drawing.draw(draws)) {
            // This try came to nothing.
        }
        for (int row = 0; row < rows.length; row++) {
            rows[row] = drawing.number(row);
        }
        return rows;
    }

    static List<Problem> made(Made made) {
        if (made instanceof Made.Found found) {
            return found.problems();
        }
        throw new IllegalStateException("Nothing was made: " + made);
    }

    static long[] rows(Column column) {
        List<BigDecimal> rows = column.rows();
        long[] numbers = new long[rows.size()];
        for (int row = 0; row < numbers.length; row++) {
            numbers[row] = rows.get(row).longValueExact();
        }
        return numbers;
    }
}
