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

    private static final long LOWEST_BITS = AllRods.ONES;

    private final Loan loan;
    private long held;
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
        if (places < 0 || places >= PackedNumber.MOST_DIGITS) {
            throw new IllegalArgumentException("A walk has 0 to 14 decimals, not " + places + ".");
        }
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
        held = 0;
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

    /// Works `row` if it can be taken or added; false if more is taken than the frame holds, or
    /// more added.
    private boolean play(long row) {
        long sign = row >> 63;
        long added = row & ~PackedNumber.MINUS;
        long seen = AllRods.seen(held, sign);
        long sum = seen + added + AllRods.THREES;
        if (AllRods.over(seen, added, sum) < 0) {
            return false;
        }
        long carries = AllRods.carries(seen, added, sum);
        count(seen, added, carries, sign);
        held = AllRods.seen(AllRods.shown(sum, carries), sign);
        return true;
    }

    private void count(long seen, long added, long carries, long sign) {
        long five = AllRods.fives(seen, added);
        long lower = AllRods.lower(added);
        long carriedFive = carries & AllRods.UPPER & ~five;
        int carried = Long.bitCount(carries & LOWEST_BITS);
        digits += Long.bitCount((added | lower) & AllRods.UPPER);
        fives += Long.bitCount((five & ~(seen | added)) | (carriedFive & ~(seen ^ added)));
        tensWithFive += Long.bitCount(seen & added & lower & ~five);
        passed += carried;
        borrows += carried & (int) sign;
        strokes +=
                Long.bitCount(lower)
                        + Long.bitCount((added ^ five) & AllRods.UPPER)
                        + Long.bitCount(carriedFive)
                        + carried;
    }

    private void lendFor(long row) {
        if (row >= 0) {
            throw PackedNumber.tooLong("This sum", PackedNumber.RODS + 1);
        }
        play(loan.lend(held, row));
        play(row);
        belowZero = true;
    }

    private void giveBack() {
        long back = loan.giveBack(held);
        if (back != 0) {
            play(back);
        }
    }

    /// The total so far.
    public long total() {
        return PackedNumber.size(held) - loan.lent();
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
