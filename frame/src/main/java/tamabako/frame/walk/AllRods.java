package tamabako.frame.walk;

/// The beads of sixteen rods in one long, and what happens to all of them at once when a row comes.
///
/// Taking is adding seen from the other side: with every rod read as what it lacks to nine, taking
/// a digit adds it, borrows are carries, and the technique and the strokes are the same. So a row
/// of either sign is worked by the same few lines, on rods that are `seen` from its side.
///
/// The digits of a row come `raised` by three on every rod: then five lower beads run over into the
/// upper bead, and two upper beads into the next rod, and one addition does the whole row.
///
/// Masks have one bit a rod, the highest of its four, unless said otherwise.
final class AllRods {

    /// The upper bead of every rod.
    static final long UPPER = 0x8888_8888_8888_8888L;

    /// One on every rod.
    static final long ONES = 0x1111_1111_1111_1111L;

    private static final long LOWER = 0x7777_7777_7777_7777L;
    private static final long THREES = 0x3333_3333_3333_3333L;
    private static final long NINES_AND_ONE = 0xCCCC_CCCC_CCCC_CCCDL;

    private AllRods() {}

    /// `rods` as they are for 0, and for -1 what each lacks to nine. Doing it twice gives `rods`
    /// again.
    static long seen(long rods, long side) {
        return (rods ^ side) + (NINES_AND_ONE & side);
    }

    /// The digits of a packed row, without its sign, three more on every rod.
    static long raised(long row) {
        return (row & ~PackedNumber.MINUS) + THREES;
    }

    /// Whether the row carries off the highest rod.
    static boolean runsOff(long seen, long raised) {
        return Long.compareUnsigned(seen + raised, raised) < 0;
    }

    /// Every carry of the whole row, ripples too: in the lowest bit of a rod that one is carried to
    /// it, in the highest that its lower beads make five with what is carried.
    static long carries(long seen, long raised) {
        return (seen + raised) ^ seen ^ raised;
    }

    /// What the rods show after the row: the three is still on those whose lower beads made no
    /// five.
    static long shown(long seen, long raised, long carries) {
        return seen + raised - 3 * ((~carries & UPPER) >>> 3);
    }

    /// Where the lower beads of rod and digit make five or more, before anything is carried.
    static long fives(long seen, long raised) {
        return ((seen & LOWER) + (raised & LOWER)) & UPPER;
    }

    /// Where there is a digit other than 0.
    static long digits(long raised) {
        return (raised | (raised << 1)) & UPPER;
    }

    /// Where the digits have lower beads: every digit but 0 and 5.
    static long lower(long raised) {
        return (raised << 1) & UPPER;
    }

    /// Over how many rods the longest of the `carries` runs on, where there is one.
    ///
    /// One runs on from a rod that passes ten only with it.
    static int longestRun(long seen, long raised, long carries) {
        long passing = ((carries >>> 4) & ONES) << 3;
        long passingAlone = (seen & raised) | ((seen | raised) & fives(seen, raised));
        int longest = 1;
        for (long on = passing & ~passingAlone; on != 0; on &= on >>> 4) {
            longest++;
        }
        return longest;
    }
}
