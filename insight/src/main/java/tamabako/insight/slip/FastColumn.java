package tamabako.insight.slip;

/// A column worked by a [FastHand], row by row, with loans where the total goes below zero.
///
/// The same as [tamabako.frame.column.ColumnWork] on the common setup; a test compares them.
final class FastColumn {

    private static final int NO_LOAN = -1;

    private final long[] rows;
    private final int unitRod;
    private final int rowsBefore;
    private final long[] frameBefore;
    private final int[] stepsBefore;
    private final FastHand hand = new FastHand();
    private long shown;
    private int loan = NO_LOAN;

    /// @param rows the rows in units of their last place
    /// @param unitRod how many decimal places they have
    FastColumn(long[] rows, int unitRod) {
        this(rows, unitRod, 0);
    }

    private FastColumn(long[] rows, int unitRod, int rowsBefore) {
        this.rows = rows;
        this.unitRod = unitRod;
        this.rowsBefore = rowsBefore;
        this.frameBefore = new long[rows.length];
        this.stepsBefore = new int[rows.length];
        for (int i = 0; i < rows.length; i++) {
            work(i);
        }
    }

    /// A part of a column: `rows` begins with what the frame shows before it.
    ///
    /// @param rowsBefore one less than the number of rows before the part
    static FastColumn from(long[] rows, int unitRod, int rowsBefore) {
        return new FastColumn(rows, unitRod, rowsBefore);
    }

    /// How many rows of the column stand before the first one here.
    int rowsBefore() {
        return rowsBefore;
    }

    /// How many steps were made before row `i`, from 0.
    int stepsBefore(int i) {
        return stepsBefore[i];
    }

    StepLog log() {
        return hand.log();
    }

    long[] rows() {
        return rows;
    }

    /// What the frame shows when row `i`, from 0, begins: with the loan made for it.
    long frameBefore(int i) {
        return frameBefore[i];
    }

    /// What the frame shows at the end.
    long shown() {
        return shown;
    }

    /// What is still lent at the end; 0 if nothing.
    long lent() {
        return loan == NO_LOAN ? 0 : Tens.power(loan);
    }

    private void work(int i) {
        int where = Code.row(Math.max(0, rowsBefore + i + 1));
        stepsBefore[i] = hand.log().size();
        if (shown + rows[i] < 0) {
            borrowFor(rows[i], where);
        }
        frameBefore[i] = shown;
        hand.enter(rows[i], where);
        shown += rows[i];
        if (loan != NO_LOAN && shown >= Tens.power(loan)) {
            hand.take(loan, 1, StepLog.Role.LOAN, where);
            shown -= Tens.power(loan);
            loan = NO_LOAN;
        }
    }

    private void borrowFor(long row, int where) {
        int rod = Math.max(unitRod, Math.max(length(Math.abs(row)), length(shown)));
        long old = 0;
        if (loan != NO_LOAN) {
            rod = Math.max(rod, loan + 1);
            old = Tens.power(loan);
        }
        if (shown + Tens.power(rod) - old + row < 0) {
            rod++;
        }
        long more = Tens.power(rod) - old;
        for (int place = rod; place >= (loan == NO_LOAN ? rod : loan); place--) {
            hand.add(place, Tens.digit(more, place), StepLog.Role.LOAN, where);
        }
        shown += more;
        loan = rod;
    }

    /// Zero is one digit before the point.
    private int length(long number) {
        return number == 0 ? 1 + unitRod : Tens.length(number);
    }
}
