package tamabako.frame.walk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import tamabako.frame.Unworkable;

/// A number in one long, for walks: a rod to every four bits, the lowest rod in the lowest bits.
///
/// Of the four bits the highest is the upper bead and the other three count the lower beads, so the
/// digits 0 to 9 are 0 to 4 and 8 to 12. The highest bit of all says minus. A row has at most 15
/// digits, which leaves the sixteenth rod to carry to. Packed numbers without a minus compare as
/// unsigned longs just as the numbers do.
///
/// Decimals are counted in units of the last place: 8.9 with one place is packed as 89.
public final class PackedNumber {

    /// The most digits that a packed row has.
    public static final int MOST_DIGITS = 15;

    /// How many rods a walk has.
    static final int RODS = 16;

    static final long MINUS = Long.MIN_VALUE;

    private static final long LIMIT = 1_000_000_000_000_000L;

    private PackedNumber() {}

    /// Packs a whole number of at most 15 digits.
    ///
    /// @throws Unworkable if it has more
    public static long pack(long number) {
        long rest = Math.abs(number);
        if (rest >= LIMIT || rest < 0) {
            throw tooLong(Long.toString(number), Long.toString(number).replace("-", "").length());
        }
        long packed = 0;
        for (int shift = 0; rest != 0; shift += 4) {
            packed |= code((int) (rest % 10)) << shift;
            rest /= 10;
        }
        return number < 0 ? packed | MINUS : packed;
    }

    /// Packs `number` in units of its decimal place `places`.
    ///
    /// @throws Unworkable if that takes more than 15 digits
    /// @throws ArithmeticException if `number` has more decimals than `places`
    public static long pack(BigDecimal number, int places) {
        BigDecimal units = number.scaleByPowerOfTen(places).setScale(0, RoundingMode.UNNECESSARY);
        if (units.precision() > MOST_DIGITS) {
            throw tooLong(number.toPlainString(), units.precision());
        }
        return pack(units.longValueExact());
    }

    /// The number that `packed` holds.
    public static long unpack(long packed) {
        long size = size(packed & ~MINUS);
        return packed < 0 ? -size : size;
    }

    /// What all sixteen rods read, none of them a sign.
    static long size(long rods) {
        long tens = rods - 3 * ((rods & AllRods.UPPER) >>> 3);
        long hundreds = (tens & 0x0F0F0F0F0F0F0F0FL) + 10 * ((tens >>> 4) & 0x0F0F0F0F0F0F0F0FL);
        long fours =
                (hundreds & 0x00FF00FF00FF00FFL) + 100 * ((hundreds >>> 8) & 0x00FF00FF00FF00FFL);
        long eights = (fours & 0xFFFF0000FFFFL) + 10_000 * ((fours >>> 16) & 0xFFFF0000FFFFL);
        return (eights & 0xFFFFFFFFL) + 100_000_000 * (eights >>> 32);
    }

    /// The digit on `rod`, 0 to 14 counted from the lowest.
    public static int digit(long packed, int rod) {
        int code = (int) (packed >>> (4 * rod)) & 15;
        return code - 3 * (code >>> 3);
    }

    /// `packed` with another digit, 0 to 9, on `rod`, 0 to 14 counted from the lowest.
    public static long withDigit(long packed, int rod, int digit) {
        return (packed & ~(15L << (4 * rod))) | (code(digit) << (4 * rod));
    }

    /// How many digits `packed` has; zero has none.
    public static int digits(long packed) {
        return (67 - Long.numberOfLeadingZeros(packed & ~MINUS)) / 4;
    }

    /// Whether `packed` has a minus sign.
    public static boolean isMinus(long packed) {
        return packed < 0;
    }

    /// The same number with the other sign; zero stays as it is.
    public static long negate(long packed) {
        return packed == 0 ? 0 : packed ^ MINUS;
    }

    /// The four bits that show `digit`.
    static long code(int digit) {
        return digit + 3L * (digit / 5);
    }

    private static Unworkable tooLong(String number, int needed) {
        return new Unworkable(new Unworkable.Reason.TooLong(number, needed, MOST_DIGITS));
    }
}
