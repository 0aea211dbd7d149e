package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.List;
import tamabako.problems.making.draw.Draws;

/// A choice among things that stand for so many columns each: a thing is drawn exactly as often as
/// there are columns behind it.
///
/// Where a thing begins and ends is a fraction of all columns. A draw is a fraction too, of which
/// as many bits are drawn as it takes to say on which side of each border it lies: nearly always
/// the first 62 suffice.
final class Choice {

    private static final int BITS = 62;

    private final BigInteger[] sums;

    /// The first bits of each sum as a fraction of all.
    private final long[] borders;

    private final BigInteger all;

    private Choice(BigInteger[] sums, BigInteger all) {
        this.sums = sums;
        this.all = all;
        this.borders = new long[sums.length];
        for (int i = 0; i < sums.length && all.signum() > 0; i++) {
            borders[i] = sums[i].shiftLeft(BITS).divide(all).longValueExact();
        }
    }

    static Choice of(List<BigInteger> counts) {
        BigInteger[] sums = new BigInteger[counts.size()];
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i < sums.length; i++) {
            sum = sum.add(counts.get(i));
            sums[i] = sum;
        }
        return new Choice(sums, sum);
    }

    /// How many columns there are behind all of them.
    BigInteger all() {
        return all;
    }

    /// The index of one of them; there must be a column behind some.
    int draw(Draws draws) {
        long drawn = draws.bits() >>> (Long.SIZE - BITS);
        int from = 0;
        int to = borders.length - 1;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (drawn < borders[middle]) {
                to = middle;
            } else {
                from = middle + 1;
            }
        }
        boolean isClear = from == 0 || borders[from - 1] != drawn;
        return isClear ? from : drawLonger(BigInteger.valueOf(drawn), BITS, draws);
    }

    /// Goes on with a draw whose first bits are those of a border.
    private int drawLonger(BigInteger first, int already, Draws draws) {
        BigInteger drawn = first;
        int bits = already;
        while (true) {
            BigInteger least = drawn.multiply(all);
            BigInteger most = least.add(all);
            int index = 0;
            while (sums[index].shiftLeft(bits).compareTo(least) <= 0) {
                index++;
            }
            if (sums[index].shiftLeft(bits).compareTo(most) >= 0) {
                return index;
            }
            drawn = drawn.shiftLeft(BITS).or(BigInteger.valueOf(draws.bits() >>> 2));
            bits += BITS;
        }
    }
}
