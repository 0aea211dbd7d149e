package tamabako.bench.insight;

import java.util.Arrays;

/// The rods of a frame, worked digit by digit with two tables: what a rod then shows, and whether
/// ten was passed. No step is noted; only the number at the end is read.
final class TableHand {

    private static final int RODS = 20;
    private static final int[] ADDED = new int[100];
    private static final int[] TAKEN = new int[100];

    static {
        for (int held = 0; held <= 9; held++) {
            for (int digit = 0; digit <= 9; digit++) {
                ADDED[10 * held + digit] = (held + digit) % 10;
                TAKEN[10 * held + digit] = (held - digit + 10) % 10;
            }
        }
    }

    private final int[] rods = new int[RODS];

    /// Shows `number`, which is not negative.
    void show(long number) {
        Arrays.fill(rods, 0);
        add(number);
    }

    /// Shows what `other` shows.
    void showAs(TableHand other) {
        System.arraycopy(other.rods, 0, rods, 0, RODS);
    }

    /// Adds `number`, or takes it where it is below zero, from its highest digit.
    void add(long number) {
        long left = Math.abs(number);
        int rod = 0;
        long unit = 1;
        while (left / unit >= 10) {
            unit *= 10;
            rod++;
        }
        for (; unit > 0; unit /= 10, rod--) {
            int digit = (int) (left / unit % 10);
            if (number < 0) {
                take(rod, digit);
            } else {
                put(rod, digit);
            }
        }
    }

    /// Adds the digits from place `from` down to 0 of `digits`, the lowest first in the array.
    void add(int[] digits, int from, boolean minus) {
        for (int rod = from; rod >= 0; rod--) {
            if (minus) {
                take(rod, digits[rod]);
            } else {
                put(rod, digits[rod]);
            }
        }
    }

    private void put(int rod, int digit) {
        int held = rods[rod];
        rods[rod] = ADDED[10 * held + digit];
        if (rods[rod] < held) {
            int next = rod + 1;
            while (next < RODS && rods[next] == 9) {
                rods[next++] = 0;
            }
            if (next < RODS) {
                rods[next]++;
            }
        }
    }

    private void take(int rod, int digit) {
        int held = rods[rod];
        rods[rod] = TAKEN[10 * held + digit];
        if (rods[rod] > held) {
            int next = rod + 1;
            while (next < RODS && rods[next] == 0) {
                rods[next++] = 9;
            }
            if (next < RODS) {
                rods[next]--;
            }
        }
    }

    /// The number shown.
    long read() {
        long number = 0;
        for (int rod = RODS - 3; rod >= 0; rod--) {
            number = 10 * number + rods[rod];
        }
        return number;
    }
}
