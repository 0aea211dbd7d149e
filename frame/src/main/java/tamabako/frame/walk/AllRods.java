package tamabako.frame.walk;

/// The beads of sixteen rods in one long, and what happens to all of them at once when a row comes.
///
/// Taking is adding seen from the other side: with every rod read as what it lacks to nine, taking
/// a digit adds it, borrows are carries, and the technique and the strokes are the same. So a row
/// of either sign is worked by the same few lines, on rods that are `seen` from its side.
///
/// Masks have one bit a rod, the highest of its four, unless said otherwise.
final class AllRods {

    /// The upper bead of every rod.
    static final long UPPER = 0x8888_8888_8888_8888L;

    /// The lower beads of every rod.
    static final long LOWER = 0x7777_7777_7777_7777L;

    /// Three on every rod: with it, five lower beads run over into the upper bead, and two upper
    /// beads into the next rod.
    static final long THREES = 0x3333_3333_3333_3333L;

    /// One on every rod.
    static final long ONES = 0x1111_1111_1111_1111L;

    private static final long NINES_AND_ONE = 0xCCCC_CCCC_CCCC_CCCDL;

    private AllRods() {}

    /// `held` as a row of `sign` sees it: itself for 0, what each rod lacks to nine for -1. Doing
    /// it twice gives `held` again.
    static long seen(long held, long sign) {
        return (held ^ sign) + (NINES_AND_ONE & sign);
    }

    /// Where the lower beads of both make five or more, before anything is carried.
    static long fives(long seen, long digits) {
        return ((seen & LOWER) + (digits & LOWER) + THREES) & UPPER;
    }

    /// Every carry of the whole row, ripples too: in the lowest bit of a rod that one is carried to
    /// it, in the highest that its lower beads make five with what is carried.
    static long carries(long seen, long digits, long sum) {
        return sum ^ seen ^ digits ^ THREES;
    }

    /// `sum`, which is `seen + digits + THREES`, as the rods show it.
    static long shown(long sum, long carries) {
        return sum - 3 * ((~carries & UPPER) >>> 3);
    }

    /// Negative where `sum` carries off the highest rod.
    static long over(long seen, long digits, long sum) {
        long raised = digits + THREES;
        return (seen & raised) | ((seen | raised) & ~sum);
    }

    /// What the rods show when every digit is on and nothing is carried yet.
    static long uncarried(long seen, long digits, long fives) {
        long lower = (seen & LOWER) + (digits & LOWER) - 5 * (fives >>> 3);
        return lower | ((seen ^ digits ^ fives) & UPPER);
    }

    /// Where `digits` has lower beads: every digit but 0 and 5.
    static long lower(long digits) {
        return ((digits & LOWER) + LOWER) & UPPER;
    }
}
