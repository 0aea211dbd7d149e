package tamabako.frame.walk;

import tamabako.frame.Unworkable;

/// Walks columns and counts what the hand does, without an object for any of it. One walk is used
/// again and again, by one thread.
///
/// It counts what the traces of [tamabako.frame.column.ColumnWork] hold: every step of the working
/// *and* of the setting, for setting the first row is work for the fingers too. A digit that is set
/// is a direct step without a carry; [#settingSteps()] and [#settingStrokes()] tell that share.
/// Totals below zero are worked with a loan as there, and the steps of the loan count. The frame is
/// a modern one; the order in which carries are done changes no count.
///
/// Rows are packed numbers ([PackedNumber]) of at most 15 digits, in units of the last decimal
/// place, and there are sixteen rods. 34 + 78:
///
/// ```
/// walk.walk(new long[] {PackedNumber.pack(34), PackedNumber.pack(78)}, 2);
/// walk.total();                                     // 112
/// walk.tally().count(Technique.TEN_COMPLEMENT);     // 2
/// walk.tally().strokes();                           // 6, of them 2 to set 34
/// ```
public final class ColumnWalk {

    private final Loan loan;
    private final Tally tally;
    private long rods;
    private int rows;
    private long firstRow;
    private boolean belowZero;

    /// A walk for whole numbers.
    public ColumnWalk() {
        this(0);
    }

    /// A walk for numbers packed with `places` decimals, 0 to 14. They matter only to a total below
    /// zero, whose loan never comes from right of the unit rod.
    public ColumnWalk(int places) {
        this(places, false);
    }

    private ColumnWalk(int places, boolean runs) {
        this.loan = new Loan(places);
        this.tally = new Tally(runs);
    }

    /// A walk for numbers packed with `places` decimals that also measures how far carries and
    /// borrows run on.
    public static ColumnWalk measuringRuns(int places) {
        return new ColumnWalk(places, true);
    }

    /// Walks the first `count` rows of `column` from a cleared frame.
    ///
    /// @throws Unworkable if the total needs more than sixteen rods; the walk is then half done
    public void walk(long[] column, int count) {
        clear();
        int worked = walkAboveZero(column, count);
        while (worked < count) {
            put(column[worked++]);
        }
    }

    /// Works the rows up to the first that asks for a loan and gives its index. Until the end the
    /// rods are kept as the side of the last row sees them, for the next is often of the same.
    private int walkAboveZero(long[] column, int count) {
        long seen = 0;
        long seenFrom = 0;
        int i = 0;
        for (; i < count; i++) {
            long side = column[i] >> 63;
            long turned = AllRods.seen(seen, side ^ seenFrom);
            long raised = AllRods.raised(column[i]);
            if (AllRods.runsOff(turned, raised)) {
                break;
            }
            seen = play(turned, raised, side);
            seenFrom = side;
        }
        rods = AllRods.seen(seen, seenFrom);
        rows = i;
        firstRow = i > 0 ? column[0] : 0;
        return i;
    }

    /// Clears the frame and all counts.
    public void clear() {
        loan.clear();
        tally.clear();
        rods = 0;
        rows = 0;
        firstRow = 0;
        belowZero = false;
    }

    /// Works one row more.
    ///
    /// @throws Unworkable if the total needs more than sixteen rods; the walk is then half done
    public void put(long row) {
        if (!work(row)) {
            if (row > 0) {
                throw Loan.frameTooShort();
            }
            work(loan.lend(rods, row));
            work(row);
            belowZero = true;
        }
        if (rows++ == 0) {
            firstRow = row;
        }
        if (loan.runs()) {
            work(loan.giveBack(rods));
        }
    }

    /// Works `row`; false, and nothing done, if it takes more than the rods hold or adds more than
    /// they can hold.
    private boolean work(long row) {
        long side = row >> 63;
        long seen = AllRods.seen(rods, side);
        long raised = AllRods.raised(row);
        if (AllRods.runsOff(seen, raised)) {
            return false;
        }
        rods = AllRods.seen(play(seen, raised, side), side);
        return true;
    }

    /// What `seen` rods show when the `raised` digits are on, still from their side.
    private long play(long seen, long raised, long side) {
        long carries = AllRods.carries(seen, raised);
        tally.row(seen, raised, carries, side);
        return AllRods.shown(seen, raised, carries);
    }

    /// The total so far, in units of the last decimal place.
    public long total() {
        return PackedNumber.size(rods) - loan.lent();
    }

    /// What has been done so far. It goes on counting with the walk.
    public Tally tally() {
        return tally;
    }

    /// How many of the steps set the first row; none if it is zero or below, and so worked.
    public int settingSteps() {
        return firstRow > 0 ? Long.bitCount(AllRods.digits(AllRods.raised(firstRow))) : 0;
    }

    /// How many of the strokes set the first row.
    public int settingStrokes() {
        long set = firstRow > 0 ? AllRods.raised(firstRow) : AllRods.raised(0);
        return Long.bitCount(AllRods.lower(set)) + Long.bitCount(set & AllRods.UPPER);
    }

    /// Whether the total has been below zero after any row.
    public boolean wentBelowZero() {
        return belowZero;
    }
}
