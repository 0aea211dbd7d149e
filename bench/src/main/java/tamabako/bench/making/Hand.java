package tamabako.bench.making;

import java.util.Arrays;
import tamabako.frame.Technique;

/// Works columns digit by digit from the left, on digits in an array; the rules of the frame it
/// takes from [Technique] alone. What is made is held against this, and the peers check with it.
final class Hand {

    private static final int RODS = 16;
    private static final int[][] ADDING = new int[10][10];
    private static final int[][] TAKING = new int[10][10];

    static {
        for (int held = 0; held <= 9; held++) {
            for (int digit = 1; digit <= 9; digit++) {
                ADDING[held][digit] = Technique.ofAdding(held, digit).ordinal();
                TAKING[held][digit] = Technique.ofTaking(held, digit).ordinal();
            }
        }
    }

    private final int[] rods = new int[RODS];
    private final int[] techniques = new int[4];
    private int strokes;

    /// Works all rows; false, and the work half done, once the total falls below zero.
    boolean work(long[] rows) {
        Arrays.fill(rods, 0);
        strokes = 0;
        for (int row = 0; row < rows.length; row++) {
            if (!add(rows[row])) {
                return false;
            }
            if (row == 0) {
                // The first row is set: strokes, but no techniques.
                Arrays.fill(techniques, 0);
            }
        }
        return true;
    }

    private boolean add(long row) {
        boolean minus = row < 0;
        long size = Math.abs(row);
        long unit = 1;
        int rod = 0;
        while (size / unit >= 10) {
            unit *= 10;
            rod++;
        }
        for (; rod >= 0; rod--, unit /= 10) {
            int digit = (int) (size / unit % 10);
            if (digit > 0 && !step(rod, digit, minus)) {
                return false;
            }
        }
        return true;
    }

    private boolean step(int rod, int digit, boolean minus) {
        if (rod == RODS) {
            return false;
        }
        int held = rods[rod];
        int end = minus ? held - digit : held + digit;
        int then = end < 0 ? end + 10 : end % 10;
        techniques[(minus ? TAKING : ADDING)[held][digit]]++;
        strokes += (held / 5 == then / 5 ? 0 : 1) + (held % 5 == then % 5 ? 0 : 1);
        rods[rod] = then;
        return end == then || step(rod + 1, 1, minus);
    }

    int count(Technique technique) {
        return techniques[technique.ordinal()];
    }

    /// All strokes, those of the first row included.
    int strokes() {
        return strokes;
    }

    /// How many digits the total has.
    int digits() {
        int digits = RODS;
        while (digits > 1 && rods[digits - 1] == 0) {
            digits--;
        }
        return digits;
    }

    /// Whether `held` plus or minus `digit` is done directly.
    static boolean isDirect(int held, int digit, boolean minus) {
        return digit == 0
                || (minus ? TAKING : ADDING)[held][digit] == Technique.DIRECT.ordinal();
    }
}
