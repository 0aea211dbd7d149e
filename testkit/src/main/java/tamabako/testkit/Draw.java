package tamabako.testkit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;

/// Draws test values from one seed; the same seed draws the same values on every machine.
///
/// Early seeds draw small values, so that the first failure of a property is already a short one.
/// The stream is SplitMix64 (Steele, Lea and Flood, "Fast splittable pseudorandom number
/// generators", OOPSLA 2014).
public final class Draw {

    private final long seed;
    private long state;

    public Draw(long seed) {
        this.seed = seed;
        this.state = seed * 0x9E3779B97F4A7C15L;
    }

    /// The next 64 bits.
    public long bits() {
        state += 0x9E3779B97F4A7C15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /// A whole number from `least` to `most`, both included.
    public int between(int least, int most) {
        return least + (int) Long.remainderUnsigned(bits(), most - (long) least + 1);
    }

    /// True `times` out of `outOf`.
    public boolean chance(int times, int outOf) {
        return between(1, outOf) <= times;
    }

    /// One of `choices`.
    public <T> T oneOf(List<T> choices) {
        return choices.get(between(0, choices.size() - 1));
    }

    /// A length from 1 to `most` that starts small: seed 0 draws 1, and the range opens with the
    /// seed.
    public int length(int most) {
        return between(1, (int) Math.min(most, 1 + seed / 50));
    }

    /// A whole number of exactly `digits` digits, the first not zero.
    public BigInteger whole(int digits) {
        StringBuilder figures = new StringBuilder(digits);
        figures.append((char) ('0' + between(1, 9)));
        for (int i = 1; i < digits; i++) {
            figures.append((char) ('0' + between(0, 9)));
        }
        return new BigInteger(figures.toString());
    }

    /// A number of `digits` significant digits with `places` decimals.
    public BigDecimal decimal(int digits, int places) {
        return new BigDecimal(whole(digits), places);
    }
}
