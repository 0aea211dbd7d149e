package tamabako.frame.walk;

import tamabako.frame.Rod;
import tamabako.frame.Technique;

/// Every step that can be, worked out once from [Technique] and [Rod].
///
/// An entry is found by a rod and the digit that comes to it: four bits of what is held, four of
/// the digit, as in a packed number. Its lower half is the step of the digit on rod 0, with no
/// entry yet, or 0 for the digit 0. Its upper half is the step on rod 1 that carries one to this
/// rod, or borrows one from it, after that digit has come: the lower half of the rod right of it is
/// followed or preceded by that.
final class StepTable {

    private static final int TAKING = 256;

    private static final long[] STEPS = new long[2 * TAKING];

    static {
        for (int held = 0; held <= 9; held++) {
            for (int digit = 0; digit <= 9; digit++) {
                int at = (int) ((PackedNumber.code(held) << 4) | PackedNumber.code(digit));
                STEPS[at] = both(held, digit, 1);
                STEPS[TAKING | at] = both(held, -digit, -1);
            }
        }
    }

    private StepTable() {}

    /// The entry for the lowest eight bits of `heldAndDigit`, where a digit is added (`side` 0) or
    /// taken (-1).
    static long entry(long side, long heldAndDigit) {
        return STEPS[(int) ((side & TAKING) | (heldAndDigit & 255))];
    }

    /// The entry for the lowest four bits of `held` and of `digits`.
    static long entry(long side, long held, long digits) {
        return entry(side, ((held & 15) << 4) | (digits & 15));
    }

    /// Whether the digit of `entry` passes ten and what it passes on passes ten again.
    static boolean runsOn(long entry, long above) {
        return ((entry << 32) & above) < 0;
    }

    private static long both(int held, int digit, int one) {
        int shown = Math.floorMod(held + digit, 10);
        long passed = (long) step(shown, one) + PackedStep.PASSED_TO_THE_LEFT;
        return (passed << 32) | (digit == 0 ? 0 : Integer.toUnsignedLong(step(held, digit)));
    }

    private static int step(int held, int digit) {
        Technique technique =
                digit > 0 ? Technique.ofAdding(held, digit) : Technique.ofTaking(held, -digit);
        Rod after = Rod.showing(Math.floorMod(held + digit, 10));
        return PackedStep.of(Rod.showing(held), after, digit, technique);
    }
}
