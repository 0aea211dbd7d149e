package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.Arrays;

/// Things that stand for so many columns each, laid into slots of one size of which none holds more
/// than two things.
///
/// Every slot has as much room as there are columns in all, and a thing takes as much room as its
/// columns times the number of slots. A slot that its own thing does not fill is filled up with one
/// that has more than fits its own slot (Vose, "A linear algorithm for generating random numbers
/// with a given distribution", 1991).
final class Slots {

    private final BigInteger[] own;
    private final int[] other;

    private Slots(BigInteger[] own) {
        this.own = own;
        this.other = new int[own.length];
        Arrays.setAll(other, slot -> slot);
    }

    /// @param counts the columns behind each thing; no more things than `slots`
    static Slots fill(BigInteger[] counts, BigInteger all, int slots) {
        BigInteger[] rooms = new BigInteger[slots];
        for (int i = 0; i < slots; i++) {
            rooms[i] =
                    i < counts.length
                            ? counts[i].multiply(BigInteger.valueOf(slots))
                            : BigInteger.ZERO;
        }
        Slots filled = new Slots(rooms);
        filled.fillUp(all);
        return filled;
    }

    private void fillUp(BigInteger room) {
        int[] waiting = new int[own.length];
        int small = 0;
        int large = own.length;
        for (int slot = 0; slot < own.length; slot++) {
            if (own[slot].compareTo(room) < 0) {
                waiting[small++] = slot;
            } else {
                waiting[--large] = slot;
            }
        }
        while (small > 0 && large < waiting.length) {
            int least = waiting[--small];
            int most = waiting[large];
            other[least] = most;
            own[most] = own[most].add(own[least]).subtract(room);
            if (own[most].compareTo(room) < 0) {
                large++;
                waiting[small++] = most;
            }
        }
    }

    /// How much of `slot` its own thing takes.
    BigInteger own(int slot) {
        return own[slot];
    }

    /// What else is in `slot`; the slot itself if its own thing fills it.
    int other(int slot) {
        return other[slot];
    }
}
