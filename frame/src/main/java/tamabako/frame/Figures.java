package tamabako.frame;

import java.math.BigDecimal;
import java.math.BigInteger;

/// The digits of a number by their places.
public final class Figures {

    private Figures() {}

    /// How many whole digits `number` has: 306 has 3, 0.35 has 0, and zeros right after the point
    /// count below that, so 0.0203 has -1. Zero has 1.
    ///
    /// Source: Heffelfinger and Flom, Abacus: Mystery of the Bead, decimals.
    public static int wholeDigits(BigDecimal number) {
        return number.signum() == 0 ? 1 : number.precision() - number.scale();
    }

    /// The digit of `number` at the power of ten `place`, 0 to 9; the sign does not matter.
    public static int digitAt(BigDecimal number, int place) {
        return number.abs().scaleByPowerOfTen(-place).toBigInteger().mod(BigInteger.TEN).intValue();
    }
}
