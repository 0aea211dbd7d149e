package tamabako.frame.walk;

import java.util.Set;
import tamabako.frame.Technique;

/// What the hand has done in a walk so far, counted over all its steps, carries and borrows
/// included.
///
/// Two laws of the frame save half of the counting: a step passes ten exactly when it is followed
/// by a carry or led by a borrow, and a carried one is itself direct, needs the five, or passes
/// ten. So the ten-complements with and without five are as many as the carries and borrows, and
/// the direct steps and those by five-complement are as many as the digits.
public final class Tally {

    private int digits;
    private int fives;
    private int tensWithFive;
    private int passed;
    private int borrows;
    private int strokes;
    private int longestRun;
    private final boolean runs;

    /// A tally that also measures how far carries and borrows run on, if `runs`.
    Tally(boolean runs) {
        this.runs = runs;
    }

    void clear() {
        digits = 0;
        fives = 0;
        tensWithFive = 0;
        passed = 0;
        borrows = 0;
        strokes = 0;
        longestRun = 0;
    }

    /// Counts a row: `raised` digits on rods `seen` from its `side`, with all their `carries`.
    ///
    /// A digit that makes five of the lower beads moves the upper bead too; whether that is a
    /// five-complement, a ten-complement or ten with five depends on the upper beads of rod and
    /// digit. A carry moves one lower bead, and the upper one as well where it makes five.
    void row(long seen, long raised, long carries, long side) {
        long five = AllRods.fives(seen, raised);
        long lower = AllRods.lower(raised);
        long carriedFive = carries & AllRods.UPPER & ~five;
        int carried = Long.bitCount(carries & AllRods.ONES);
        digits += Long.bitCount(AllRods.digits(raised));
        fives += Long.bitCount((five & ~(seen | raised)) | (carriedFive & ~(seen ^ raised)));
        tensWithFive += Long.bitCount(seen & raised & lower & ~five);
        passed += carried;
        borrows += carried & (int) side;
        strokes +=
                Long.bitCount(lower)
                        + Long.bitCount((raised ^ five) & AllRods.UPPER)
                        + Long.bitCount(carriedFive)
                        + carried;
        if (runs && carried != 0) {
            longestRun = Math.max(longestRun, AllRods.longestRun(seen, raised, carries));
        }
    }

    /// How many steps there are by `technique`.
    public int count(Technique technique) {
        return switch (technique) {
            case DIRECT -> digits - fives;
            case FIVE_COMPLEMENT -> fives;
            case TEN_COMPLEMENT -> passed - tensWithFive;
            case TEN_WITH_FIVE -> tensWithFive;
        };
    }

    /// Whether all steps are by one of `techniques`. Where this is asked millions of times, compare
    /// [#used()] with bits worked out once.
    public boolean isWithin(Set<Technique> techniques) {
        return (used() & ~bits(techniques)) == 0;
    }

    /// The techniques in use, a bit each: see [#bits(Set)].
    public int used() {
        return bit(Technique.DIRECT, digits - fives)
                | bit(Technique.FIVE_COMPLEMENT, fives)
                | bit(Technique.TEN_COMPLEMENT, passed - tensWithFive)
                | bit(Technique.TEN_WITH_FIVE, tensWithFive);
    }

    /// `techniques` as bits: 1 direct, 2 five-complement, 4 ten-complement, 8 ten with five.
    public static int bits(Set<Technique> techniques) {
        int bits = 0;
        for (Technique technique : techniques) {
            bits |= bit(technique, 1);
        }
        return bits;
    }

    private static int bit(Technique technique, int count) {
        if (count == 0) {
            return 0;
        }
        return switch (technique) {
            case DIRECT -> 1;
            case FIVE_COMPLEMENT -> 2;
            case TEN_COMPLEMENT -> 4;
            case TEN_WITH_FIVE -> 8;
        };
    }

    /// How many steps there are.
    public int steps() {
        return digits + passed;
    }

    /// How many steps carry one.
    public int carries() {
        return passed - borrows;
    }

    /// How many steps borrow one.
    public int borrows() {
        return borrows;
    }

    /// Over how many rods the longest carry or borrow runs on: none without any, over two in 95 +
    /// 7.
    ///
    /// @throws IllegalStateException if the walk was not made to measure it
    public int longestRun() {
        if (!runs) {
            throw new IllegalStateException("This walk does not measure how far carries run on.");
        }
        return longestRun;
    }

    /// How many strokes the steps take: an upper bead is one, a block of lower beads is one.
    public int strokes() {
        return strokes;
    }
}
