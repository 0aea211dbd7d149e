package tamabako.frame.walk;

import java.util.List;
import tamabako.frame.Rod;
import tamabako.frame.Technique;

/// One step in one int, as a [PackedTrace] holds it: all that a [tamabako.frame.Step] tells.
///
/// From the lowest bit: digit before (4 bits), digit after (4), digit added or taken (4), taken
/// (1), upper bead moved (1), lower beads moved (1), rod (4), place of the entry that the step
/// serves (4), kind of entry (2), carried or borrowed (1), unused (2), technique (2), how many
/// steps are noted for it at first, 1 or 2 with its carry or borrow (2; so the highest bit says
/// that it passes ten). Rods and places count from the last decimal place. In which order and
/// direction the beads of the rod move follows from the digits before and after, as in
/// [tamabako.frame.Hand].
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
    private static final int UPPER = 13;
    private static final int LOWER = 14;
    private static final int ROD = 15;
    private static final int PLACE = 19;
    private static final int ENTRY = 23;
    private static final int PASSED = 25;
    private static final int TECHNIQUE = 28;
    private static final int STEPS = 30;

    /// Added to a step, makes it one that carries to the next rod or borrows from it.
    static final int PASSED_TO_THE_LEFT = (1 << PASSED) | (1 << ROD);

    /// Added to a step, puts it and what it serves one rod further to the left.
    static final int LEFT = (1 << ROD) | (1 << PLACE);

    private static final List<Technique> TECHNIQUES = List.of(Technique.values());
    private static final List<Entry> ENTRIES = List.of(Entry.values());

    private PackedStep() {}

    /// A step on rod 0 that serves nothing yet.
    static int of(Rod before, Rod after, int digit, Technique technique) {
        return before.value()
                | (after.value() << 4)
                | (Math.abs(digit) << 8)
                | ((digit < 0 ? 1 : 0) << TAKEN)
                | (Math.abs(after.upper() - before.upper()) << UPPER)
                | ((after.lower() == before.lower() ? 0 : 1) << LOWER)
                | ((technique.passesTen() ? 2 : 1) << STEPS)
                | (TECHNIQUES.indexOf(technique) << TECHNIQUE);
    }

    /// What is added to a step for the entry that it serves.
    static int serving(Entry entry) {
        return ENTRIES.indexOf(entry) << ENTRY;
    }

    /// What is added to a step to have it `rods` further to the left.
    static int on(int rods) {
        return rods << ROD;
    }

    /// How many steps are noted for `step` at first: none if it is 0, and one more for its carry or
    /// borrow, which may run on.
    static int steps(int step) {
        return step >>> STEPS;
    }

    /// 1 if the step passes ten, 0 if not.
    static int passesTen(int step) {
        return step >>> 31;
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
