package tamabako.insight.slip;

import java.util.Arrays;

/// Which of many differences are the same, by open addressing; sorting all of them would take most
/// of the time that a problem's table takes.
final class Distinct {

    private static final long SPREAD = 0x9E37_79B9_7F4A_7C15L;

    private final long[] sorted;
    private final int[] groups;
    private final long[] keys;
    private final int shift;

    /// @param events whose differences are never 0
    Distinct(Events events) {
        int count = events.size();
        // Half as much room again is enough: most differences are shared by several slips.
        int bits = Integer.SIZE - Integer.numberOfLeadingZeros(count + count / 2 + 1);
        this.keys = new long[1 << bits];
        this.shift = Long.SIZE - bits;
        this.groups = new int[count];
        long[] found = new long[count];
        int size = 0;
        for (int i = 0; i < count; i++) {
            long key = events.tenths(i);
            int slot = slot(key);
            if (keys[slot] == 0) {
                keys[slot] = key;
                found[size++] = key;
            }
            groups[i] = slot;
        }
        this.sorted = Arrays.copyOf(found, size);
        Arrays.sort(sorted);
        int[] ranks = new int[keys.length];
        for (int rank = 0; rank < size; rank++) {
            ranks[slot(sorted[rank])] = rank;
        }
        for (int i = 0; i < count; i++) {
            groups[i] = ranks[groups[i]];
        }
    }

    /// Where a key is, or where it belongs.
    private int slot(long key) {
        int slot = (int) ((key * SPREAD) >>> shift);
        while (keys[slot] != key && keys[slot] != 0) {
            slot = (slot + 1) & (keys.length - 1);
        }
        return slot;
    }

    /// The different differences, ascending.
    long[] sorted() {
        return sorted;
    }

    /// The place of each event's difference among them.
    int[] groups() {
        return groups;
    }
}
