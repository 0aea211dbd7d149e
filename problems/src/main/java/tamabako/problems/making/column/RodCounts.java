package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

    private final int rows;
    private final int digits;
    private final int[] patterns;
    private final Choice signs;

    /// What is held after a digit is added to, or taken from, what was held before; -1 where that
    /// is not allowed. By sign, digit held and digit.
    private final int[] after;

    /// In how many ways a rod can go on: by kind of rod, signs to come and digit held.
    private final long[][] ways;

    private RodCounts(int rows, int digits, Set<Technique> allowed, List<Integer> patterns) {
        this.rows = rows;
        this.digits = digits;
        this.patterns = patterns.stream().mapToInt(bits -> bits).toArray();
        this.after = steps(allowed);
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
        long[] sizes = new long[rows];
        for (int place = digits - 1; place >= 0; place--) {
            drawRod(pattern, place, draws, sizes);
        }
        for (int row = 0; row < rows; row++) {
            into.setSize(row, sizes[row]);
            into.setMinus(row, ((pattern >> (rows - 1 - row)) & 1) == 1);
        }
        return true;
    }

    private void drawRod(int pattern, int place, Draws draws, long[] sizes) {
        int kind = place == digits - 1 ? HIGHEST : LOWER;
        long[] on = ways[kind];
        int held = 0;
        for (int row = 0; row < rows; row++) {
            int left = rows - row;
            int sign = (pattern >> (left - 1)) & 1;
            int next = next(pattern, left - 1);
            long drawn = draws.below(on[next(pattern, left) + held]);
            int digit = kind - 1;
            int then = -1;
            while (drawn >= 0) {
                digit++;
                then = row == 0 ? digit : after[(sign * 10 + held) * 10 + digit];
                drawn -= then < 0 ? 0 : on[next + then];
            }
            sizes[row] |= Digits.in(place, digit);
            held = then;
        }
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
        int sign = (pattern >> (left - 1)) & 1;
        int next = next(pattern, left - 1);
        long sum = 0;
        for (int digit = leastDigit; digit <= 9; digit++) {
            // The first row is set: any digit may be, and it is held then.
            int then = left == rows ? digit : after[(sign * 10 + held) * 10 + digit];
            sum = Math.addExact(sum, then < 0 ? 0 : on[next + then]);
        }
        return sum;
    }

    private static int[] steps(Set<Technique> allowed) {
        int[] after = new int[200];
        for (int held = 0; held <= 9; held++) {
            after[10 * held] = held;
            after[100 + 10 * held] = held;
            for (int digit = 1; digit <= 9; digit++) {
                boolean adds = allowed.contains(Technique.ofAdding(held, digit));
                boolean takes = allowed.contains(Technique.ofTaking(held, digit));
                after[10 * held + digit] = adds ? held + digit : -1;
                after[100 + 10 * held + digit] = takes ? held - digit : -1;
            }
        }
        return after;
    }
}
