package tamabako.insight.slip;

import java.util.Arrays;

/// Which of many differences are the same, by open addressing; sorting all of them would take most
/// of the time that a problem's table takes.
final class Distinct {

    private static final long SPREAD = 0x9E37_79B9_7F4A_7C15L;

    private final long[] sorted;
    private final int[] groups;

    /// @param events whose differences are never 0
    Distinct(Events events) {
        int bits = Long.SIZE - Long.numberOfLeadingZeros(2L * events.size() + 1);
        long[] keys = new long[1 << bits];
        int[] slots = new int[events.size()];
        long[] found = new long[events.size()];
        int size = 0;
        for (int i = 0; i < slots.length; i++) {
            long key = events.tenths(i);
            int slot = (int) ((key * SPREAD) >>> (Long.SIZE - bits));
            while (keys[slot] != key && keys[slot] != 0) {
                slot = (slot + 1) & (keys.length - 1);
            }
            if (keys[slot] == 0) {
                keys[slot] = key;
                found[size++] = key;
            }
            slots[i] = slot;
        }
        this.sorted = Arrays.copyOf(found, size);
        Arrays.sort(sorted);
        int[] ranks = new int[keys.length];
        for (int slot = 0; slot < keys.length; slot++) {
            ranks[slot] = keys[slot] == 0 ? 0 : Arrays.binarySearch(sorted, keys[slot]);
        }
        this.groups = slots;
        for (int i = 0; i < groups.length; i++) {
            groups[i] = ranks[slots[i]];
        }
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
