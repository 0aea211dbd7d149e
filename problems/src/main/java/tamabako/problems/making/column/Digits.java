package tamabako.problems.making.column;

import tamabako.problems.making.draw.Powers;

/// The digits of a row in one long: four bits each, the last digit in the lowest, as in
/// [tamabako.frame.walk.PackedNumber], but without a sign and so up to sixteen of them.
final class Digits {

    private static final long UPPER = 0x8888_8888_8888_8888L;
    private static final int FOUR = 10_000;
    private static final int FOUR_BITS = 16;
    private static final long[] PACKED = fours();

    private Digits() {}

    /// Packs a number of 1 to 16 digits.
    static long pack(long number) {
        long packed = 0;
        long rest = number;
        for (int shift = 0; rest != 0; shift += FOUR_BITS) {
            packed |= PACKED[(int) (rest % FOUR)] << shift;
            rest /= FOUR;
        }
        return packed;
    }

    /// The number that is packed.
    static long number(long size) {
        long tens = size - 3 * ((size & UPPER) >>> 3);
        long hundreds = (tens & 0x0F0F0F0F0F0F0F0FL) + 10 * ((tens >>> 4) & 0x0F0F0F0F0F0F0F0FL);
        long fours =
                (hundreds & 0x00FF00FF00FF00FFL) + 100 * ((hundreds >>> 8) & 0x00FF00FF00FF00FFL);
        long eights = (fours & 0xFFFF0000FFFFL) + 10_000 * ((fours >>> 16) & 0xFFFF0000FFFFL);
        return (eights & 0xFFFFFFFFL) + 100_000_000 * (eights >>> 32);
    }

    /// How many digits there are.
    static int length(long size) {
        return (67 - Long.numberOfLeadingZeros(size)) / 4;
    }

    /// The digit of a place, counted from the last.
    static int digit(long size, int place) {
        int code = (int) (size >>> (4 * place)) & 15;
        return code - 3 * (code >>> 3);
    }

    /// The bits of `digit` in `place`.
    static long in(int place, int digit) {
        return (long) (digit + 3 * ((digit + 3) >>> 3)) << (4 * place);
    }

    static long with(long size, int place, int digit) {
        return (size & ~(15L << (4 * place))) | in(place, digit);
    }

    /// With one digit more, in `place`; those from there on move left.
    static long inserted(long size, int place, int digit) {
        long right = (1L << (4 * place)) - 1;
        return ((size & ~right) << 4) | in(place, digit) | (size & right);
    }

    /// Without the digit in `place`; those left of it move right.
    static long removed(long size, int place) {
        long right = (1L << (4 * place)) - 1;
        return ((size >>> 4) & ~right) | (size & right);
    }

    static int lead(long size) {
        return digit(size, length(size) - 1);
    }

    /// Whether all digits of a row of two or more are the same.
    static boolean isOneDigit(long size) {
        int length = length(size);
        return length > 1 && Long.bitCount(sames(size, size >>> 4, length - 1)) == length - 1;
    }

    /// Whether the digits of a row of three or more count up or down by one.
    static boolean counts(long size) {
        int length = length(size);
        if (length < 3) {
            return false;
        }
        int step = digit(size, 1) - digit(size, 0);
        for (int place = 2; place < length; place++) {
            if (digit(size, place) - digit(size, place - 1) != step) {
                return false;
            }
        }
        return step == 1 || step == -1;
    }

    /// The places in which both rows have the same digit, as bits 3, 7, 11 and so on.
    static long sames(long one, long other) {
        return sames(one, other, Math.min(length(one), length(other)));
    }

    private static long sames(long one, long other, int length) {
        long different = one ^ other;
        different |= different << 1;
        different |= different << 2;
        return length == 0 ? 0 : ~different & UPPER & (-1L >>> (64 - 4 * length));
    }

    private static long[] fours() {
        long[] fours = new long[FOUR];
        for (int number = 0; number < FOUR; number++) {
            for (int place = 0; place < 4; place++) {
                fours[number] |= in(place, (int) (number / Powers.of(place) % 10));
            }
        }
        return fours;
    }
}
