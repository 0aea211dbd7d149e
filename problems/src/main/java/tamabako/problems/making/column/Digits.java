package tamabako.problems.making.column;

import tamabako.frame.walk.PackedNumber;

/// What can be seen in the digits of a packed row.
final class Digits {

    private static final long UPPER = 0x8888_8888_8888_8888L;

    private Digits() {}

    /// The row without its sign.
    static long size(long row) {
        return row & Long.MAX_VALUE;
    }

    static int lead(long row) {
        return PackedNumber.digit(row, PackedNumber.digits(row) - 1);
    }

    /// Whether all digits of a row of two or more are the same.
    static boolean isOneDigit(long row) {
        int length = PackedNumber.digits(row);
        return length > 1 && same(row, row >>> 4, length - 1) == length - 1;
    }

    /// Whether the digits of a row of three or more count up or down by one.
    static boolean counts(long row) {
        int length = PackedNumber.digits(row);
        if (length < 3) {
            return false;
        }
        int step = PackedNumber.digit(row, 1) - PackedNumber.digit(row, 0);
        for (int place = 2; place < length; place++) {
            if (PackedNumber.digit(row, place) - PackedNumber.digit(row, place - 1) != step) {
                return false;
            }
        }
        return step == 1 || step == -1;
    }

    /// The lowest place where both rows have the same digit; -1 if there is none.
    static int samePlace(long one, long other) {
        int length = Math.min(PackedNumber.digits(one), PackedNumber.digits(other));
        long same = sames(one, other, length);
        return same == 0 ? -1 : Long.numberOfTrailingZeros(same) / 4;
    }

    /// In how many of the lowest `length` places both have the same digit.
    static int same(long one, long other, int length) {
        return Long.bitCount(sames(one, other, length));
    }

    private static long sames(long one, long other, int length) {
        long different = one ^ other;
        different |= different << 1;
        different |= different << 2;
        return length == 0 ? 0 : ~different & UPPER & (-1L >>> (64 - 4 * length));
    }
}
