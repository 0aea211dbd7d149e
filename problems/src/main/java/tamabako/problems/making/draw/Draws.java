package tamabako.problems.making.draw;

import java.math.BigInteger;

/// A stream of chance from one seed, the same on every machine for ever.
///
/// The stream is SplitMix64 (Steele, Lea and Flood, "Fast splittable pseudorandom number
/// generators", OOPSLA 2014).
public final class Draws {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private static final long LOW = 0xFFFF_FFFFL;

    private long state;

    public Draws(long seed) {
        state = seed;
    }

    /// The next 64 bits.
    public long bits() {
        state += GOLDEN;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /// A whole number from 0 to below `bound`, each equally likely: draws from the last, incomplete
    /// run of `bound` numbers are drawn again.
    public long below(long bound) {
        long drawn = bits() >>> 1;
        long number = drawn % bound;
        while (drawn - number + (bound - 1) < 0) {
            drawn = bits() >>> 1;
            number = drawn % bound;
        }
        return number;
    }

    /// A whole number from 0 to below `bound`, for bounds up to 2^31: as even as [#below(long)] and
    /// quicker (Lemire, "Fast random integer generation in an interval", 2019).
    public int pick(int bound) {
        long product = (bits() >>> 32) * bound;
        if ((product & LOW) < bound) {
            long least = (1L << 32) % bound;
            while ((product & LOW) < least) {
                product = (bits() >>> 32) * bound;
            }
        }
        return (int) (product >>> 32);
    }

    /// The same for bounds up to 2^63.
    public long pick(long bound) {
        long drawn = bits();
        if (drawn * bound >= 0 && drawn * bound < bound) {
            return pickAgain(drawn, bound);
        }
        return Math.unsignedMultiplyHigh(drawn, bound);
    }

    /// Draws again from the part that makes some numbers likelier than others.
    private long pickAgain(long first, long bound) {
        long drawn = first;
        long least = Long.remainderUnsigned(-bound, bound);
        while (Long.compareUnsigned(drawn * bound, least) < 0) {
            drawn = bits();
        }
        return Math.unsignedMultiplyHigh(drawn, bound);
    }

    /// A whole number from 0 to below `bound`, of whatever size.
    public BigInteger below(BigInteger bound) {
        int bits = bound.bitLength();
        if (bits < Long.SIZE) {
            return BigInteger.valueOf(below(bound.longValue()));
        }
        while (true) {
            BigInteger drawn = BigInteger.ZERO;
            for (int have = 0; have < bits; have += 32) {
                drawn = drawn.shiftLeft(32).or(BigInteger.valueOf(bits() >>> 32));
            }
            drawn = drawn.and(BigInteger.ONE.shiftLeft(bits).subtract(BigInteger.ONE));
            if (drawn.compareTo(bound) < 0) {
                return drawn;
            }
        }
    }

    /// A whole number from `least` to `most`, both included, each equally likely.
    public long between(long least, long most) {
        return least + below(most - least + 1);
    }

    /// A number from 0 to below 1, in steps of 2^-53.
    public double part() {
        return (bits() >>> 11) * 0x1.0p-53;
    }
}
