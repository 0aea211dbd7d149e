package tamabako.insight.slip;

/// Counts the occasions for slips that a column on the frame gives, without listing the slips.
///
/// It comes to the same as the sum of the weights of all that [ColumnSlips] and [WrittenSlips]
/// list; a test compares them.
final class ColumnTally {

    /// Room for the slips of writing an answer.
    private static final int WRITTEN = 256;

    private final long[] rows;
    private final FastColumn column;
    private final double[] occasions = new double[Slot.COUNT];
    private final int[] steps = new int[Move.values().length];
    private final int[] cells = new int[Cell.COUNT];

    ColumnTally(UnitRows units) {
        this.rows = units.rows();
        this.column = new FastColumn(rows, units.places());
        steps(column.log(0));
        for (int i = 0; i < rows.length; i++) {
            digits(i);
            row(i);
            if (i > 0) {
                jumps(Way.LINE_JUMP_ABOVE, i, i - 1);
            }
            if (i + 1 < rows.length) {
                jumps(Way.LINE_JUMP_BELOW, i, i + 1);
            }
        }
        Events last = new Events(WRITTEN);
        if (column.lent() != 0) {
            new ComplementSlips(column.lent(), column.lent() - column.shown(), last).add();
        }
        new WrittenSlips(10 * units.total(), units.places() + 1, last).add();
        last.addOccasions(occasions);
    }

    Tally tally() {
        return new Tally(occasions, steps, cells);
    }

    private void count(Way way) {
        count(way, Weights.of(way));
    }

    private void count(Way way, double worth) {
        occasions[Slot.of(way.kind())] += worth;
    }

    private void steps(StepLog log) {
        for (int i = 0; i < log.size(); i++) {
            switch (log.role(i)) {
                case CARRY -> leftOut(Way.CARRY_LEFT_OUT, log, i - 1);
                case BORROW -> leftOut(Way.BORROW_LEFT_OUT, log, i + 1);
                case LOAN -> {
                    if (log.digit(i) < 0) {
                        count(Way.LOAN_NOT_RETURNED);
                    }
                }
                case ENTRY -> {}
            }
            if (log.role(i) != StepLog.Role.LOAN) {
                StepSlips slips = StepSlips.of(log, i);
                steps[slips.move().index()]++;
                cells[Cell.index(log.before(i), log.digit(i))]++;
                slips.options().addOccasions(occasions);
            }
        }
    }

    private void leftOut(Way way, StepLog log, int of) {
        Move move = StepSlips.of(log, of).move();
        occasions[Slot.of(way.kind(), move)] += Weights.of(way);
    }

    private void digits(int i) {
        long high = Math.abs(rows[i]);
        do {
            int digit = (int) (high % 10);
            high /= 10;
            DigitSlips.of(digit, false).addOccasions(occasions);
            if (high > 0 && high % 10 != digit) {
                count(Way.DIGITS_SWAPPED, ReadingSlips.swappedWeighs(digit, high < 10));
            }
            if (digit != 0) {
                count(Way.DIGIT_ONE_ROD_LEFT, 1);
            }
        } while (high > 0);
        // The last digit has no rod on its right, and where it is taken one rod too far left ten
        // times as much must be there.
        long last = -rows[i] % 10;
        if (last > 0 && column.frameBefore(i) + rows[i] + last < 10 * last) {
            count(Way.DIGIT_ONE_ROD_LEFT, -1);
        }
    }

    private void row(int i) {
        if (rows[i] == 0) {
            return;
        }
        count(Way.ROW_ONE_ROD_LEFT, 1);
        count(Way.ROW_SKIPPED);
        count(Way.ROW_TWICE);
        if (rows[i] < 0) {
            count(Way.MINUS_READ_AS_PLUS, 1);
        } else if (i > 0 && rows[i - 1] < 0) {
            count(Way.PLUS_READ_AS_MINUS, RowSlips.PLUS_AFTER_MINUS);
        }
    }

    /// A jump to where the two rows end alike leaves the answer right.
    private void jumps(Way way, int i, int other) {
        int places = Tens.length(Math.abs(rows[i])) - 1;
        long left = Math.abs(rows[other]) - Math.abs(rows[i]);
        int told = places;
        while (told > 0 && left % 10 == 0) {
            left /= 10;
            told--;
        }
        if (told > 0) {
            count(way, told * RowSlips.jumpWeighs(way, places + 1));
        }
    }
}
