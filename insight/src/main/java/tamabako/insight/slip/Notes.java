package tamabako.insight.slip;

import java.util.Arrays;

/// Slips with the chance that each was made; one slip may have several entries.
final class Notes {

    private long[] codes = new long[64];
    private long[] tenths = new long[64];
    private double[] chances = new double[64];
    private double[] parts = new double[64];
    private int size;

    /// Adds a slip that was made with `chance`, as one of `among` slips at once.
    void add(long code, long off, double chance, int among) {
        if (size == codes.length) {
            codes = Arrays.copyOf(codes, 2 * size);
            tenths = Arrays.copyOf(tenths, 2 * size);
            chances = Arrays.copyOf(chances, 2 * size);
            parts = Arrays.copyOf(parts, 2 * size);
        }
        codes[size] = code;
        tenths[size] = off;
        chances[size] = chance;
        parts[size] = chance / among;
        size++;
    }

    int size() {
        return size;
    }

    long code(int i) {
        return codes[i];
    }

    long tenths(int i) {
        return tenths[i];
    }

    /// The chance that entry `i` was made.
    double chance(int i) {
        return chances[i];
    }

    /// That chance, parted among the slips that were made at once.
    double part(int i) {
        return parts[i];
    }
}
