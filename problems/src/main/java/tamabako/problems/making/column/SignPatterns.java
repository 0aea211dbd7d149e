package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tamabako.problems.making.draw.Draws;

/// All patterns of plus and minus rows that are asked for: each is as likely as the others.
final class SignPatterns {

    static final Point START = new Point(0, 0, 0);

    private static final int MOST_LISTED = 16;

    private final int rows;
    private final Signs signs;
    private final boolean countsRuns;

    /// All patterns, where they are few.
    private final int[] listed;

    private final Map<Point, Choice> choices = new HashMap<>();

    /// Where a pattern stands: so many rows have their sign, so many of them minus, and the last so
    /// many without a plus between.
    record Point(int row, int minus, int run) {

        Point plus() {
            return new Point(row + 1, minus, 0);
        }

        Point taken(Signs signs) {
            // A run that may be of any length is not counted.
            return new Point(row + 1, minus + 1, Math.min(run + 1, signs.longestRun()));
        }
    }

    SignPatterns(int rows, Signs signs) {
        this.rows = rows;
        this.signs =
                signs.longestRun() >= rows
                        ? new Signs(signs.leastMinus(), signs.mostMinus(), signs.lastPlus(), 0)
                        : signs;
        this.countsRuns = signs.longestRun() < rows;
        this.listed =
                rows <= MOST_LISTED ? all().stream().mapToInt(bits -> bits).toArray() : new int[0];
    }

    /// How many there are.
    BigInteger count() {
        return count(START);
    }

    /// How many of them begin like this.
    BigInteger count(Point point) {
        if (point.row() == rows) {
            return mayEnd(point) ? BigInteger.ONE : BigInteger.ZERO;
        }
        return choice(point).all();
    }

    private Choice choice(Point point) {
        Choice known = choices.get(point);
        if (known == null) {
            BigInteger taken = mayTake(point) ? count(point.taken(signs)) : BigInteger.ZERO;
            known = Choice.of(List.of(count(point.plus()), taken));
            choices.put(point, known);
        }
        return known;
    }

    /// Whether a pattern of all rows has enough minus rows.
    boolean mayEnd(Point point) {
        return point.minus() >= signs.leastMinus();
    }

    Point taken(Point point) {
        return point.taken(signs);
    }

    boolean mayTake(Point point) {
        return mayTake(point.row(), point.minus(), point.run());
    }

    private boolean mayTake(int row, int minus, int run) {
        boolean isFixed = row == 0 || (signs.lastPlus() && row == rows - 1);
        boolean runEnds = countsRuns && run >= signs.longestRun();
        return !isFixed && !runEnds && minus < signs.mostMinus();
    }

    /// Gives the rows of `facts` the signs of one of them; there must be any.
    void draw(Draws draws, Facts facts) {
        if (listed.length > 0) {
            int bits = listed[draws.pick(listed.length)];
            for (int row = 0; row < rows; row++) {
                facts.setMinus(row, ((bits >> (rows - 1 - row)) & 1) == 1);
            }
            return;
        }
        Point point = START;
        while (point.row() < rows) {
            boolean minus = choice(point).draw(draws) == 1;
            facts.setMinus(point.row(), minus);
            point = minus ? point.taken(signs) : point.plus();
        }
    }

    /// All of them, as bits, that of the first row the highest; for at most 31 rows.
    List<Integer> all() {
        List<Integer> all = new ArrayList<>();
        collect(START, 0, all);
        return all;
    }

    private void collect(Point point, int bits, List<Integer> all) {
        if (count(point).signum() == 0) {
            return;
        }
        if (point.row() == rows) {
            all.add(bits);
            return;
        }
        collect(point.plus(), bits << 1, all);
        if (mayTake(point)) {
            collect(point.taken(signs), (bits << 1) | 1, all);
        }
    }

    /// Whether the rows of `facts` have the signs of one of them.
    boolean have(Facts facts) {
        int minus = 0;
        int run = 0;
        for (int row = 0; row < rows; row++) {
            if (!facts.isMinus(row)) {
                run = 0;
                continue;
            }
            if (!mayTake(row, minus, run)) {
                return false;
            }
            minus++;
            run++;
        }
        return minus >= signs.leastMinus();
    }
}
