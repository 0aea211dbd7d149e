package tamabako.problems.making.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tamabako.frame.walk.Tally;
import tamabako.problems.making.draw.Powers;

/// How columns of short rows can go on, row by row, by the allowed techniques, with totals that
/// stay at 0 or above.
final class Continuations {

    /// The most digits of a row: there are too many rows that are longer.
    private static final int MOST_DIGITS = 3;

    private final SignPatterns patterns;
    private final Lengths lengths;
    private final int rowCount;
    private final RowSteps steps;
    private final int required;

    /// By total, or what it lacks to -1 where rows are taken.
    private final Map<Long, Rows> known = new HashMap<>();

    /// Where a column stands: signs so far, required techniques still missing, total.
    record Point(SignPatterns.Point signs, int missing, long total) {}

    Continuations(Asked asked) {
        this.patterns = asked.patterns();
        this.lengths = asked.shape().lengths();
        this.rowCount = asked.shape().rows();
        this.steps = new RowSteps(asked.allowed());
        this.required = Tally.bits(asked.required());
    }

    /// Whether the columns that are asked for can be followed like this.
    static boolean fit(Asked asked) {
        return asked.neverBelow()
                && asked.shape().lengths().most() <= MOST_DIGITS
                && asked.shape().lengths() instanceof Lengths.Between;
    }

    Point start() {
        return new Point(SignPatterns.START, required, 0);
    }

    boolean isWhole(Point point) {
        return point.signs().row() == rowCount;
    }

    /// Whether a whole column has all the techniques that it must have, and minus rows enough.
    boolean isGranted(Point whole) {
        return whole.missing() == 0 && patterns.mayEnd(whole.signs());
    }

    /// Where a column can stand after one row more.
    List<Point> next(Point point) {
        List<Point> next = new ArrayList<>();
        SignPatterns.Point signs = point.signs();
        if (signs.row() == 0) {
            first(point, next);
            return next;
        }
        add(point, signs.plus(), false, next);
        if (patterns.mayTake(signs)) {
            add(point, patterns.taken(signs), true, next);
        }
        return next;
    }

    /// Any row may be set, and setting uses no technique.
    private void first(Point point, List<Point> next) {
        SignPatterns.Point signs = point.signs().plus();
        for (long row = Powers.of(lengths.least() - 1); row < Powers.of(lengths.most()); row++) {
            next.add(new Point(signs, point.missing(), row));
        }
    }

    private void add(Point from, SignPatterns.Point to, boolean minus, List<Point> next) {
        if (patterns.count(to).signum() == 0) {
            return;
        }
        Rows rows =
                known.computeIfAbsent(
                        minus ? ~from.total() : from.total(), _ -> rows(from.total(), minus));
        for (int i = 0; i < rows.size; i++) {
            int missing = from.missing() & ~rows.uses[i];
            next.add(new Point(to, missing, from.total() + rows.numbers[i]));
        }
    }

    private Rows rows(long total, boolean minus) {
        Rows rows = new Rows();
        for (int length = lengths.least(); length <= lengths.most(); length++) {
            steps.forEach(
                    total,
                    minus,
                    length,
                    (row, uses) -> rows.add(minus ? -row : row, uses & required));
        }
        return rows;
    }

    /// Rows with their sign, and the required techniques that each uses.
    private static final class Rows {

        private short[] numbers = new short[32];
        private byte[] uses = new byte[32];
        private int size;

        void add(long number, int used) {
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * size);
                uses = Arrays.copyOf(uses, 2 * size);
            }
            numbers[size] = (short) number;
            uses[size++] = (byte) used;
        }
    }
}
