package tamabako.frame.walk;

import java.util.List;
import tamabako.frame.Rod;
import tamabako.frame.Technique;

/// One step in one int, as a [PackedTrace] holds it: all that a [tamabako.frame.Step] tells.
///
/// From the lowest bit: digit before (4 bits), digit after (4), digit added or taken (4), taken
/// (1), technique (2), upper bead moved (1), lower beads moved (1), rod (4), place of the entry
/// that the step serves (4), kind of entry (2), carried or borrowed (1). Rods and places count from
/// the last decimal place. In which order and direction the beads of the rod move follows from the
/// digits before and after, as in [tamabako.frame.Hand].
public final class PackedStep {

    /// What a step finally serves.
    public enum Entry {
        /// A digit of the first row is set.
        SETTING,
        /// A digit of a row is added or taken.
        ROW,
        /// One is lent for a total below zero.
        LOAN,
        /// The loan is given back.
        LOAN_RETURNED
    }

    private static final int TAKEN = 12;
    private static final int TECHNIQUE = 13;
    private static final int UPPER = 15;
    private static final int LOWER = 16;
    private static final int ROD = 17;
    private static final int PLACE = 21;
    private static final int ENTRY = 25;
    private static final int PASSED = 27;

    private static final List<Technique> TECHNIQUES = List.of(Technique.values());
    private static final List<Entry> ENTRIES = List.of(Entry.values());

    /// Every step on rod 0: by taken, four bits of the held digit and four of the other; 0 where
    /// there is none.
    private static final int[] STEPS = new int[512];

    static {
        for (int held = 0; held <= 9; held++) {
            for (int digit = 1; digit <= 9; digit++) {
                int at = (int) ((PackedNumber.code(held) << 4) | PackedNumber.code(digit));
                STEPS[at] = step(held, held + digit, Technique.ofAdding(held, digit));
                STEPS[256 | at] = step(held, held - digit, Technique.ofTaking(held, digit));
            }
        }
    }

    private PackedStep() {}

    private static int step(int held, int intended, Technique technique) {
        Rod before = Rod.showing(held);
        Rod after = Rod.showing(Math.floorMod(intended, 10));
        return held
                | (after.value() << 4)
                | (Math.abs(intended - held) << 8)
                | ((intended < held ? 1 : 0) << TAKEN)
                | (TECHNIQUES.indexOf(technique) << TECHNIQUE)
                | (Math.abs(after.upper() - before.upper()) << UPPER)
                | ((after.lower() == before.lower() ? 0 : 1) << LOWER);
    }

    /// The step on rod 0 that adds (`side` 0) or takes (-1) the digit in the lowest four bits of
    /// `digits` where the lowest four of `held` are; 0 if the digit is 0.
    static int of(long side, long held, long digits) {
        return STEPS[(int) ((side & 256) | ((held & 15) << 4) | (digits & 15))];
    }

    /// What is added to a step for the entry that it serves.
    static int serving(Entry entry) {
        return ENTRIES.indexOf(entry) << ENTRY;
    }

    /// What is added to a step for the place that it serves.
    static int at(int place) {
        return place << PLACE;
    }

    /// The entry and the place that `step` serves, to be added to another.
    static int served(int step) {
        return step & ((15 << PLACE) | (3 << ENTRY));
    }

    /// What is added to a step on `rod`.
    static int on(int rod) {
        return rod << ROD;
    }

    /// What is added to a step that carries one to `rod` or borrows one from it.
    static int passedTo(int rod) {
        return (rod << ROD) | (1 << PASSED);
    }

    /// 1 if there is a step, 0 if not.
    static int there(int step) {
        return -step >>> 31;
    }

    /// 1 if the step passes ten, 0 if not.
    static int passesTen(int step) {
        return (step >>> (TECHNIQUE + 1)) & 1;
    }

    /// The rod, 0 to 15 counted from the last decimal place.
    public static int rod(int step) {
        return (step >>> ROD) & 15;
    }

    /// The digit added (1 to 9) or taken (-9 to -1).
    public static int digit(int step) {
        int digit = (step >>> 8) & 15;
        return isTaken(step) ? -digit : digit;
    }

    /// How it is done.
    public static Technique technique(int step) {
        return TECHNIQUES.get((step >>> TECHNIQUE) & 3);
    }

    /// What the rod shows before, 0 to 9.
    public static int before(int step) {
        return step & 15;
    }

    /// What the rod shows after, 0 to 9.
    public static int after(int step) {
        return (step >>> 4) & 15;
    }

    /// How many strokes it takes: 1 or 2.
    public static int strokes(int step) {
        return ((step >>> UPPER) & 1) + ((step >>> LOWER) & 1);
    }

    /// How many upper beads come to the beam: 1, 0 or -1.
    public static int upper(int step) {
        return after(step) / 5 - before(step) / 5;
    }

    /// How many lower beads come to the beam: -4 to 4.
    public static int lower(int step) {
        return after(step) % 5 - before(step) % 5;
    }

    /// What the step finally serves.
    public static Entry entry(int step) {
        return ENTRIES.get((step >>> ENTRY) & 3);
    }

    /// The place of the digit that the step serves, 0 to 15 counted from the last decimal place. A
    /// carry's rod is above it.
    public static int place(int step) {
        return (step >>> PLACE) & 15;
    }

    /// Whether the step carries one, or borrows one, for another.
    public static boolean isPassed(int step) {
        return ((step >>> PASSED) & 1) == 1;
    }

    private static boolean isTaken(int step) {
        return ((step >>> TAKEN) & 1) == 1;
    }
}
