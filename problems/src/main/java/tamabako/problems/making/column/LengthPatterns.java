package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tamabako.problems.making.draw.Draws;

/// All ways in which the rows can have the lengths that are asked for: each is as likely as the
/// others.
final class LengthPatterns {

    private static final int MOST_LISTED_ROWS = 16;
    private static final int MOST_LISTED_DIGITS = 15;
    private static final int MOST_LISTED = 1 << 16;

    private final int rows;
    private final Lengths lengths;

    /// By rows still to come and digits for them in all; filled as they are needed.
    private final @Nullable Choice[][] choices;

    /// Those with so many digits in all, four bits a row, where they are few.
    private final long[] @Nullable [] listed;

    private final boolean isListed;

    LengthPatterns(Shape shape) {
        this.rows = shape.rows();
        this.lengths = shape.lengths();
        this.choices = new Choice[rows + 1][Math.max(0, lengths.mostInAll(rows)) + 1];
        this.listed = new long[choices[0].length][];
        this.isListed =
                rows <= MOST_LISTED_ROWS
                        && lengths.most() <= MOST_LISTED_DIGITS
                        && Math.pow(lengths.most() - lengths.least() + 1, rows) <= MOST_LISTED;
    }

    /// One of them, a length a row, in `into`.
    void draw(Draws draws, int[] into) {
        switch (lengths) {
            case Lengths.Between(int least, int most) -> {
                for (int row = 0; row < rows; row++) {
                    into[row] = least == most ? most : least + draws.pick(most - least + 1);
                }
            }
            case Lengths.Table(List<Integer> digits) -> {
                for (int row = 0; row < rows; row++) {
                    into[row] = digits.get(row);
                }
                shuffle(draws, into);
            }
            case Lengths.Total(int digits, _, _) -> draw(digits, draws, into);
        }
    }

    private void shuffle(Draws draws, int[] into) {
        for (int row = rows - 1; row > 0; row--) {
            int other = draws.pick(row + 1);
            int length = into[row];
            into[row] = into[other];
            into[other] = length;
        }
    }

    /// One of those with so many digits in all.
    void draw(int digits, Draws draws, int[] into) {
        if (lengths.least() == lengths.most()) {
            Arrays.fill(into, lengths.least());
        } else if (isListed && !(lengths instanceof Lengths.Table)) {
            long[] all = listed(digits);
            long drawn = all[draws.pick(all.length)];
            for (int row = 0; row < rows; row++) {
                into[row] = (int) (drawn >>> (4 * row)) & 15;
            }
        } else if (lengths instanceof Lengths.Between || lengths instanceof Lengths.Total) {
            int left = digits;
            for (int row = 0; row < rows; row++) {
                into[row] = lengths.least() + choice(rows - row, left).draw(draws);
                left -= into[row];
            }
        } else {
            draw(draws, into);
        }
    }

    private long[] listed(int digits) {
        long[] all = listed[digits];
        if (all == null) {
            all = new long[count(digits).intValueExact()];
            list(rows, digits, 0, all, 0);
            listed[digits] = all;
        }
        return all;
    }

    /// Writes all lengths of `left` more rows; how many patterns there are then.
    private int list(int left, int digits, long so, long[] all, int size) {
        if (count(left, digits).signum() == 0) {
            return size;
        }
        if (left == 0) {
            all[size] = so;
            return size + 1;
        }
        int then = size;
        for (int length = lengths.least(); length <= lengths.most(); length++) {
            then = list(left - 1, digits - length, (so << 4) | length, all, then);
        }
        return then;
    }

    /// How many have so many digits in all.
    BigInteger count(int digits) {
        return lengths instanceof Lengths.Table
                ? BigInteger.valueOf(digits == lengths.leastInAll(rows) ? 1 : 0)
                : count(rows, digits);
    }

    private BigInteger count(int left, int digits) {
        if (left == 0) {
            return digits == 0 ? BigInteger.ONE : BigInteger.ZERO;
        }
        boolean fits = digits >= left * lengths.least() && digits <= left * lengths.most();
        return fits ? choice(left, digits).all() : BigInteger.ZERO;
    }

    private Choice choice(int left, int digits) {
        Choice known = choices[left][digits];
        if (known == null) {
            List<BigInteger> counts = new ArrayList<>();
            for (int length = lengths.least(); length <= lengths.most(); length++) {
                counts.add(count(left - 1, digits - length));
            }
            known = Choice.of(counts);
            choices[left][digits] = known;
        }
        return known;
    }
}
