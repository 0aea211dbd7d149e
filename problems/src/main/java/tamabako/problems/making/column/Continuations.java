package tamabako.problems.making.column;

import java.util.ArrayList;
import java.util.List;
import tamabako.frame.walk.Tally;

/// How columns of short rows can go on, row by row, by the allowed techniques, with totals that
/// stay at 0 or above.
final class Continuations {

    /// The most digits of a row: there are too many rows that are longer.
    private static final int MOST_DIGITS = 3;

    private final SignPatterns patterns;
    private final int rowCount;
    private final NextRows nextRows;
    private final int required;

    /// Where a column stands: signs so far, required techniques still missing, total.
    record Point(SignPatterns.Point signs, int missing, int total) {}

    Continuations(Asked asked) {
        this.patterns = asked.patterns();
        this.rowCount = asked.shape().rows();
        this.nextRows = new NextRows(asked);
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
        for (int i = 0; i < nextRows.first().size(); i++) {
            next.add(new Point(signs, point.missing(), nextRows.first().number(i)));
        }
    }

    private void add(Point from, SignPatterns.Point to, boolean minus, List<Point> next) {
        if (patterns.count(to).signum() == 0) {
            return;
        }
        NextRows.Rows rows = nextRows.on(from.total(), minus);
        for (int i = 0; i < rows.size(); i++) {
            int missing = from.missing() & ~rows.uses(i);
            next.add(new Point(to, missing, from.total() + rows.number(i)));
        }
    }
}
