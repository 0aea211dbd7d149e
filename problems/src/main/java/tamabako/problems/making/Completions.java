package tamabako.problems.making;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Weighs how a column can go on from every running total, and draws by that weight: no try comes
/// to nothing, every column is as likely as its rows are, and a weight of zero proves that there is
/// none.
///
/// For columns of short rows whose totals stay at 0 or above.
final class Completions implements Source {

    /// The most digits of a row.
    private static final int MOST_DIGITS = 3;

    /// The most weights that are kept.
    private static final long MOST_KEPT = 8_000_000;

    /// The most rows that are looked at before the weighing is given up.
    private static final long MOST_WORK = 1_000_000_000L;

    private final Asked asked;
    private final Rods rods = new Rods(0);
    private final Moves firstMoves;
    private final Map<Long, Moves> moves = new HashMap<>();
    private final double[] chances;

    /// By row, minus rows and required techniques still to come, and running total; -1 for not yet
    /// weighed.
    private final double[][][][] kept;

    private long work;

    /// Where a column stands: `row` rows are written.
    private record Point(int row, int minus, int missing, long total) {

        Point after(Moves moves, int index) {
            int next = moves.row(index);
            return new Point(
                    row + 1,
                    next < 0 ? minus - 1 : minus,
                    missing & ~moves.uses(index),
                    total + next);
        }
    }

    private Completions(Asked asked) {
        this.asked = asked;
        firstMoves = Moves.first(asked);
        kept = new double[asked.rows()][asked.wish().minusRows() + 1][asked.required() + 1][];
        chances = new double[asked.wish().mostDigits() + 1];
        for (int digits = asked.wish().leastDigits(); digits < chances.length; digits++) {
            chances[digits] = asked.chance(Powers.of(digits - 1));
        }
    }

    /// The weights for `asked`, or empty where there are too many.
    static Optional<Completions> of(Asked asked) {
        boolean small = asked.wish().mostDigits() <= MOST_DIGITS && mostKept(asked) <= MOST_KEPT;
        if (asked.wish().mayGoBelowZero() || !small) {
            return Optional.empty();
        }
        Completions completions = new Completions(asked);
        completions.weight(completions.start());
        return completions.work > MOST_WORK ? Optional.empty() : Optional.of(completions);
    }

    /// About how many rows are looked at, at most, to weigh `asked`.
    static double mostWork(Asked asked) {
        return mostKept(asked) * 2.0 * (asked.mostRow() - asked.leastRow() + 1);
    }

    /// Whether there is any column.
    boolean any() {
        return weight(start()) > 0;
    }

    @Override
    public Optional<long[]> draw(Draws draws) {
        long[] rows = new long[asked.rows()];
        Point point = start();
        while (point.row() < rows.length) {
            Moves next = moves(point.row(), point.total());
            int chosen = choose(point, next, draws.part() * weight(point));
            rows[point.row()] = next.row(chosen);
            point = point.after(next, chosen);
        }
        return Optional.of(rows);
    }

    /// Every column there is, but at most `limit`.
    List<long[]> all(int limit) {
        List<long[]> all = new ArrayList<>();
        collect(start(), new long[asked.rows()], limit, all);
        return all;
    }

    private void collect(Point point, long[] rows, int limit, List<long[]> all) {
        if (all.size() == limit || weight(point) == 0) {
            return;
        }
        if (point.row() == rows.length) {
            all.add(rows.clone());
            return;
        }
        Moves next = moves(point.row(), point.total());
        int to = to(point.row(), point.minus(), next);
        for (int i = from(point.row(), point.minus(), next); i < to; i++) {
            rows[point.row()] = next.row(i);
            collect(point.after(next, i), rows, limit, all);
        }
    }

    /// The move at which the weights, added up, pass `part`.
    private int choose(Point point, Moves next, double part) {
        int to = to(point.row(), point.minus(), next);
        int chosen = -1;
        double left = part;
        for (int i = from(point.row(), point.minus(), next); i < to && left >= 0; i++) {
            double weight =
                    weight(next, i, point.row(), point.minus(), point.missing(), point.total());
            if (weight > 0) {
                chosen = i;
                left -= weight;
            }
        }
        return chosen;
    }

    private Point start() {
        return new Point(0, asked.wish().minusRows(), asked.required(), 0);
    }

    private double weight(Point point) {
        return weight(point.row(), point.minus(), point.missing(), point.total());
    }

    private double weight(int row, int minus, int missing, long total) {
        if (row == asked.rows()) {
            return minus == 0 && missing == 0 ? 1 : 0;
        }
        double[] totals = kept[row][minus][missing];
        if (totals == null) {
            totals = new double[(int) mostTotal(asked, row) + 1];
            Arrays.fill(totals, -1);
            kept[row][minus][missing] = totals;
        }
        double known = totals[(int) total];
        if (known >= 0) {
            return known;
        }
        double weight = work > MOST_WORK ? 0 : weigh(row, minus, missing, total);
        totals[(int) total] = weight;
        return weight;
    }

    private double weigh(int row, int minus, int missing, long total) {
        Moves next = moves(row, total);
        int to = to(row, minus, next);
        double sum = 0;
        for (int i = from(row, minus, next); i < to; i++) {
            sum += weight(next, i, row, minus, missing, total);
        }
        work += to;
        return sum;
    }

    /// The weight of going on with the move at `index`.
    private double weight(Moves next, int index, int row, int minus, int missing, long total) {
        int chosen = next.row(index);
        return chances[Powers.digits(Math.abs(chosen))]
                * weight(
                        row + 1,
                        chosen < 0 ? minus - 1 : minus,
                        missing & ~next.uses(index),
                        total + chosen);
    }

    private Moves moves(int row, long total) {
        return row == 0
                ? firstMoves
                : moves.computeIfAbsent(total, held -> Moves.after(held, asked, rods));
    }

    /// The first move that leaves room for the minus rows still to come.
    private int from(int row, int minus, Moves next) {
        int room = asked.rows() - row - (asked.lastIsPlus() ? 1 : 0);
        return minus > 0 && minus >= room ? next.firstMinus() : 0;
    }

    /// The end of such moves.
    private int to(int row, int minus, Moves next) {
        boolean none = minus == 0 || (asked.lastIsPlus() && row == asked.rows() - 1);
        return none ? next.firstMinus() : next.size();
    }

    private static double mostKept(Asked asked) {
        double kept = 0;
        for (int row = 0; row < asked.rows(); row++) {
            kept += mostTotal(asked, row) + 1;
        }
        return kept * (asked.wish().minusRows() + 1) * (1 << Integer.bitCount(asked.required()));
    }

    /// The largest running total after so many rows: without carries it keeps to the rods of a row.
    private static double mostTotal(Asked asked, int rows) {
        int most = asked.carries() ? rows : Math.min(rows, 1);
        return (double) most * asked.mostRow();
    }
}
