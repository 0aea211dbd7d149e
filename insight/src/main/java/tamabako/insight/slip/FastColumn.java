package tamabako.insight.slip;

import java.util.Arrays;

/// What the frame shows row by row while a column is worked, with loans where the total goes below
/// zero; and, where asked for, every step, by a [FastHand].
///
/// The same as [tamabako.frame.column.ColumnWork] on the common setup; a test compares them.
final class FastColumn {

    private static final int NO_LOAN = -1;

    private final long[] rows;
    private final int unitRod;
    private final int rowsBefore;
    private final long[] frameBefore;
    private final int[] givenBack;
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
        this.givenBack = new int[rows.length];
        Arrays.fill(givenBack, NO_LOAN);
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

    long[] rows() {
        return rows;
    }

    /// What the frame shows when row `i`, from 0, begins: with the loan made for it.
    long frameBefore(int i) {
        return frameBefore[i];
    }

    /// The rod on which a loan is given back after row `i`; -1 if none is.
    int givenBack(int i) {
        return givenBack[i];
    }

    /// What the frame shows at the end.
    long shown() {
        return shown;
    }

    /// What is still lent at the end; 0 if nothing.
    long lent() {
        return loan == NO_LOAN ? 0 : Tens.power(loan);
    }

    /// The packed place of row `i`, as in [Code].
    int where(int i) {
        return Code.row(Math.max(0, rowsBefore + i + 1));
    }

    private void work(int i) {
        if (shown + rows[i] < 0) {
            borrowFor(rows[i]);
        }
        frameBefore[i] = shown;
        shown += rows[i];
        if (loan != NO_LOAN && shown >= Tens.power(loan)) {
            shown -= Tens.power(loan);
            givenBack[i] = loan;
            loan = NO_LOAN;
        }
    }

    private void borrowFor(long row) {
        int rod = Math.max(unitRod, Math.max(length(Math.abs(row)), length(shown)));
        long old = 0;
        if (loan != NO_LOAN) {
            rod = Math.max(rod, loan + 1);
            old = Tens.power(loan);
        }
        if (shown + Tens.power(rod) - old + row < 0) {
            rod++;
        }
        shown += Tens.power(rod) - old;
        loan = rod;
    }

    /// Zero is one digit before the point.
    private int length(long number) {
        return number == 0 ? 1 + unitRod : Tens.length(number);
    }

    /// The steps of the rows from row `first` on.
    StepLog log(int first) {
        long before = first == 0 ? 0 : shownAfter(first - 1);
        FastHand hand = FastHand.holding(before);
        for (int i = first; i < rows.length; i++) {
            hand.enter(frameBefore[i] - before, StepLog.Role.LOAN, where(i));
            hand.enter(rows[i], StepLog.Role.ENTRY, where(i));
            if (givenBack[i] != NO_LOAN) {
                hand.take(givenBack[i], 1, StepLog.Role.LOAN, where(i));
            }
            before = shownAfter(i);
        }
        return hand.log();
    }

    private long shownAfter(int i) {
        long back = givenBack[i] == NO_LOAN ? 0 : Tens.power(givenBack[i]);
        return frameBefore[i] + rows[i] - back;
    }
}
