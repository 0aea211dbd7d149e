package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import tamabako.frame.Technique;
import tamabako.problems.making.draw.Draws;

/// Counts columns of equal rows that are worked without any carry or borrow, and draws each as
/// often as the others.
///
/// Without carries every rod goes its own way once the signs are known: so the columns with given
/// signs are those of the highest rod, whose digits are never 0, times those of each lower rod. On
/// a rod, how it can go on depends on the digit it holds and on the signs still to come.
final class RodCounts implements Source {

    /// More signs than these would take more room than they are worth.
    private static final int MOST_ROWS = 17;

    private static final int LOWER = 0;
    private static final int HIGHEST = 1;

    private static final int TAKING = 1;
    private static final int SETTING = 2;

    private static final long[] CODES = {0, 1, 2, 3, 4, 8, 9, 10, 11, 12};

    private final int rows;
    private final int digits;
    private final int[] patterns;
    private final Choice signs;

    /// The digits that may come, by sign and digit held.
    private final byte[][] digitsThatMay;

    /// In how many ways a rod can go on: by kind of rod, signs to come and digit held.
    private final long[][] ways;

    private final long[] sizes;

    private RodCounts(int rows, int digits, Set<Technique> allowed, List<Integer> patterns) {
        this.rows = rows;
        this.digits = digits;
        this.patterns = patterns.stream().mapToInt(bits -> bits).toArray();
        this.digitsThatMay = digitsThatMay(allowed);
        this.sizes = new long[rows];
        this.ways = new long[][] {ways(0), ways(1)};
        this.signs = Choice.of(patterns.stream().map(this::columns).toList());
    }

    /// The counts for what is asked, where no allowed technique passes ten.
    static Optional<RodCounts> of(Asked asked) {
        Shape shape = asked.shape();
        boolean fits =
                !asked.passesTen()
                        && shape.lengths().least() == shape.lengths().most()
                        && shape.rows() <= MOST_ROWS;
        return fits
                ? Optional.of(
                        new RodCounts(
                                shape.rows(),
                                shape.lengths().most(),
                                asked.allowed(),
                                asked.patterns().all()))
                : Optional.empty();
    }

    /// How many columns there are.
    BigInteger count() {
        return signs.all();
    }

    @Override
    public boolean draw(Draws draws, Facts into) {
        int pattern = patterns[signs.draw(draws)];
        Arrays.fill(sizes, 0);
        drawRod(HIGHEST, pattern, draws);
        for (int place = digits - 2; place >= 0; place--) {
            drawRod(LOWER, pattern, draws);
        }
        for (int row = 0; row < rows; row++) {
            into.put(row, sizes[row], ((pattern >> (rows - 1 - row)) & 1) == 1);
        }
        return true;
    }

    /// Draws one of all ways in which a rod can go, and follows it: of the ways that are left, the
    /// first are those that go on with the first digit that may come, and so on.
    private void drawRod(int kind, int pattern, Draws draws) {
        long[] on = ways[kind];
        long drawn = draws.pick(on[next(pattern, rows)]);
        int held = 0;
        for (int row = 0; row < rows; row++) {
            int left = rows - 1 - row;
            int next = next(pattern, left);
            int sign = row == 0 ? SETTING : (pattern >> left) & 1;
            byte[] may = digitsThatMay[10 * sign + held];
            int direction = 1 - (sign & TAKING) * 2;
            int i = 0;
            long ways = on[next + held + direction * may[0]];
            while (drawn >= ways) {
                drawn -= ways;
                ways = on[next + held + direction * may[++i]];
            }
            held += direction * may[i];
            sizes[row] = (sizes[row] << 4) | CODES[may[i]];
        }
    }

    @Override
    public boolean grants(Condition condition) {
        return condition instanceof HandCondition.OnlyTechniques
                || condition instanceof HandCondition.TechniqueCount(_, int least, int most)
                        && least <= 0
                        && (most <= 0 || most == HandCondition.ANY)
                || condition.equals(new TotalCondition.BelowZero(TotalCondition.Dips.NEVER));
    }

    /// Where the ways stand for the last `left` signs of a pattern.
    private static int next(int pattern, int left) {
        return ((1 << left) | (pattern & ((1 << left) - 1))) * 10;
    }

    private BigInteger columns(int pattern) {
        BigInteger highest = BigInteger.valueOf(ways[HIGHEST][next(pattern, rows)]);
        BigInteger lower = BigInteger.valueOf(ways[LOWER][next(pattern, rows)]);
        return highest.multiply(lower.pow(digits - 1));
    }

    private long[] ways(int leastDigit) {
        long[] on = new long[20 << rows];
        Arrays.fill(on, 10, 20, 1);
        for (int left = 1; left <= rows; left++) {
            for (int pattern = 0; pattern < 1 << left; pattern++) {
                for (int held = 0; held <= 9; held++) {
                    on[next(pattern, left) + held] = ways(on, pattern, left, held, leastDigit);
                }
            }
        }
        return on;
    }

    private long ways(long[] on, int pattern, int left, int held, int leastDigit) {
        // The first row is set: any digit may be, and it is held then.
        int sign = left == rows ? SETTING : (pattern >> (left - 1)) & 1;
        int next = next(pattern, left - 1);
        long sum = 0;
        for (byte digit : digitsThatMay[10 * sign + held]) {
            if (digit >= leastDigit) {
                int then = sign == TAKING ? held - digit : held + digit;
                sum = Math.addExact(sum, on[next + then]);
            }
        }
        return sum;
    }

    /// The zero comes last, so that the highest rod, where it may not be, never comes by it.
    private static byte[][] digitsThatMay(Set<Technique> allowed) {
        byte[][] may = new byte[30][];
        for (int held = 0; held <= 9; held++) {
            int from = held;
            may[held] = digits(digit -> allowed.contains(Technique.ofAdding(from, digit)));
            may[10 + held] = digits(digit -> allowed.contains(Technique.ofTaking(from, digit)));
            may[20 + held] = held == 0 ? digits(_ -> true) : new byte[0];
        }
        return may;
    }

    private static byte[] digits(IntPredicate may) {
        byte[] digits = new byte[10];
        int size = 0;
        for (byte digit = 1; digit <= 9; digit++) {
            if (may.test(digit)) {
                digits[size++] = digit;
            }
        }
        return Arrays.copyOf(digits, size + 1);
    }
}
