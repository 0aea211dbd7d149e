package tamabako.frame.walk;

import java.util.Set;
import tamabako.frame.Technique;
import tamabako.frame.Unworkable;

/// Walks columns and counts what the hand does, without an object for any of it. One walk is used
/// again and again, by one thread.
///
/// It counts what the traces of [tamabako.frame.column.ColumnWork] hold: every step of the working
/// *and* of the setting, for setting the first row is work for the fingers too. A digit that is set
/// is a direct step; [#settingSteps()] and [#settingStrokes()] tell that share. Totals below zero
/// are worked with a loan as there, and the steps of the loan count. The order in which carries are
/// done does not change any count.
///
/// Rows are packed numbers ([PackedNumber]) of at most 15 digits, in units of the last decimal
/// place, and there are sixteen rods.
public final class ColumnWalk {

    private final Loan loan;
    private long rods;
    private long rodsSide;
    private int rows;
    private int digits;
    private int fives;
    private int tensWithFive;
    private int passed;
    private int borrows;
    private int strokes;
    private int settingSteps;
    private int settingStrokes;
    private boolean belowZero;

    /// A walk for whole numbers.
    public ColumnWalk() {
        this(0);
    }

    /// A walk for numbers packed with `places` decimals, 0 to 14. They matter only to a total below
    /// zero, whose loan never comes from right of the unit rod.
    public ColumnWalk(int places) {
        this.loan = new Loan(places);
    }

    /// Walks the first `count` of `column` from a cleared frame.
    ///
    /// @throws Unworkable if the total needs more than sixteen rods
    public void walk(long[] column, int count) {
        clear();
        for (int i = 0; i < count; i++) {
            put(column[i]);
        }
    }

    /// Clears the frame and all counts.
    public void clear() {
        loan.clear();
        rods = 0;
        rodsSide = 0;
        rows = 0;
        digits = 0;
        fives = 0;
        tensWithFive = 0;
        passed = 0;
        borrows = 0;
        strokes = 0;
        settingSteps = 0;
        settingStrokes = 0;
        belowZero = false;
    }

    /// Works one row more.
    ///
    /// @throws Unworkable if the total needs more than sixteen rods; clear the walk then
    public void put(long row) {
        if (!play(row)) {
            lendFor(row);
        }
        if (rows++ == 0 && row > 0) {
            settingSteps = digits;
            settingStrokes = strokes;
        }
        if (loan.runs()) {
            giveBack();
        }
    }

    /// Works `row`; false, and nothing done, if more is taken than the rods hold, or more added
    /// than they can hold.
    private boolean play(long row) {
        long side = row >> 63;
        long seen = AllRods.seen(rods, side ^ rodsSide);
        long raised = AllRods.raised(row);
        long sum = seen + raised;
        if (AllRods.runsOff(sum, raised)) {
            return false;
        }
        long carries = AllRods.carries(seen, raised, sum);
        rods = AllRods.shown(sum, carries);
        rodsSide = side;
        count(seen, raised, carries, side);
        return true;
    }

    private void count(long seen, long raised, long carries, long side) {
        long five = AllRods.fives(seen, raised);
        long lower = AllRods.lower(raised);
        long carriedFive = carries & AllRods.UPPER & ~five;
        int carried = Long.bitCount(carries & AllRods.ONES);
        digits += Long.bitCount((raised & AllRods.UPPER) | lower);
        fives += Long.bitCount((five & ~(seen | raised)) | (carriedFive & ~(seen ^ raised)));
        tensWithFive += Long.bitCount(seen & raised & lower & ~five);
        passed += carried;
        borrows += carried & (int) side;
        strokes +=
                Long.bitCount(lower)
                        + Long.bitCount((raised ^ five) & AllRods.UPPER)
                        + Long.bitCount(carriedFive)
                        + carried;
    }

    private void lendFor(long row) {
        if (row >= 0) {
            throw PackedNumber.tooLong("This sum", PackedNumber.RODS + 1);
        }
        play(loan.lend(held(), row));
        play(row);
        belowZero = true;
    }

    private void giveBack() {
        long back = loan.giveBack(held());
        if (back != 0) {
            play(back);
        }
    }

    private long held() {
        return AllRods.seen(rods, rodsSide);
    }

    /// The total so far.
    public long total() {
        return PackedNumber.size(held()) - loan.lent();
    }

    public int count(Technique technique) {
        return switch (technique) {
            case DIRECT -> digits - fives;
            case FIVE_COMPLEMENT -> fives;
            case TEN_COMPLEMENT -> passed - tensWithFive;
            case TEN_WITH_FIVE -> tensWithFive;
        };
    }

    public int steps() {
        return digits + passed;
    }

    public int carries() {
        return passed - borrows;
    }

    public int borrows() {
        return borrows;
    }

    public int strokes() {
        return strokes;
    }

    public int settingSteps() {
        return settingSteps;
    }

    public int settingStrokes() {
        return settingStrokes;
    }

    public boolean wentBelowZero() {
        return belowZero;
    }

    public boolean isWithin(Set<Technique> techniques) {
        for (Technique technique : Technique.values()) {
            if (count(technique) != 0 && !techniques.contains(technique)) {
                return false;
            }
        }
        return true;
    }
}
