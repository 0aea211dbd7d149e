package tamabako.insight.slip;

/// The slips that can be made in a column.
final class ColumnSlips {

    /// How much of an occasion to miss the sign a plus row is that follows a minus row.
    private static final double PLUS_AFTER_MINUS = 0.3;

    private final FastColumn column;
    private final long[] all;
    private final int first;
    private final int lowest;
    private final Events events;

    /// @param lowest the power of ten of the rows' last place
    ColumnSlips(FastColumn column, int lowest, Events events) {
        this(column, column.rows(), 0, lowest, events);
    }

    /// The slips in a part of a column, begun on a frame that shows the part's first row.
    ///
    /// @param all the rows of the whole column
    ColumnSlips(FastColumn column, long[] all, int lowest, Events events) {
        this(column, all, 1, lowest, events);
    }

    private ColumnSlips(FastColumn column, long[] all, int first, int lowest, Events events) {
        this.column = column;
        this.all = all;
        this.first = first;
        this.lowest = lowest;
        this.events = events;
    }

    /// Adds the slips of hand, eye and rows, and those of reading a total below zero.
    void add() {
        boolean empty = first == column.rows().length;
        StepLog log = column.log();
        int step = empty ? log.size() : column.stepsBefore(first);
        new BeadSlips(log, step, log.size(), lowest, Effect.ADDED, events).add();
        for (int i = first; i < column.rows().length; i++) {
            new ReadingSlips(where(i), lowest, false, Effect.ADDED, events).add(row(i));
            neighbourRods(i);
            events.after(where(i), 0);
            wholeRow(i);
            sign(i);
            lineJump(i);
        }
        if (column.lent() != 0) {
            new ComplementSlips(column.lent(), column.lent() - column.shown(), events).add();
        }
    }

    private int where(int i) {
        return Code.row(number(i) + 1);
    }

    /// The number of row `i` in the whole column, from 0.
    private int number(int i) {
        return column.rowsBefore() + i;
    }

    private long row(int i) {
        return column.rows()[i];
    }

    private void neighbourRods(int i) {
        long size = Math.abs(row(i));
        for (int place = 0; place < Tens.length(size); place++) {
            int digit = Tens.digit(size, place);
            int mark = events.mark();
            events.after(where(i), place);
            onRod(Way.DIGIT_ONE_ROD_LEFT, i, place, digit, digit * Tens.power(place + 1));
            if (place > 0) {
                onRod(Way.DIGIT_ONE_ROD_RIGHT, i, place, digit, digit * Tens.power(place - 1));
            }
            events.share(mark, 1);
        }
    }

    /// The digit counts `entered`; what is taken must be there to be taken.
    private void onRod(Way way, int i, int place, int digit, long entered) {
        long meant = digit * Tens.power(place);
        if (row(i) >= 0) {
            events.add(10 * (entered - meant), coded(way, i, place, digit));
            return;
        }
        long taken = -row(i) - -row(i) % Tens.power(place + 1);
        if (column.frameBefore(i) - taken >= entered || events.omit(Omission.BEAD_CHECK)) {
            events.add(10 * (meant - entered), coded(way, i, place, digit));
        }
    }

    private long coded(Way way, int i, int place, int digit) {
        return Code.with(Code.of(way, where(i), place + lowest), digit);
    }

    private void wholeRow(int i) {
        long row = row(i);
        int where = where(i);
        int mark = events.mark();
        events.add(90 * row, Code.of(Way.ROW_ONE_ROD_LEFT, where));
        // The last digit falls right of the unit rod, where it is not read.
        events.add(10 * (row / 10 - row), Code.of(Way.ROW_ONE_ROD_RIGHT, where));
        events.share(mark, 1);
        events.add(-10 * row, Code.of(Way.ROW_SKIPPED, where));
        events.add(10 * row, Code.of(Way.ROW_TWICE, where));
    }

    private void sign(int i) {
        int where = where(i);
        if (row(i) < 0) {
            events.add(-20 * row(i), Code.of(Way.MINUS_READ_AS_PLUS, where), 1);
        } else if (number(i) > 0 && all[number(i) - 1] < 0) {
            long code = Code.of(Way.PLUS_READ_AS_MINUS, where);
            events.add(-20 * row(i), code, PLUS_AFTER_MINUS);
        }
    }

    /// From some place down, the digits of the row above or below are read.
    private void lineJump(int i) {
        int length = Tens.length(Math.abs(row(i)));
        int mark = events.mark();
        for (int place = 0; place + 1 < length; place++) {
            if (number(i) > 0) {
                jump(Way.LINE_JUMP_ABOVE, i, number(i) - 1, place);
            }
            if (number(i) + 1 < all.length) {
                jump(Way.LINE_JUMP_BELOW, i, number(i) + 1, place);
            }
        }
        events.share(mark, 1);
    }

    private void jump(Way way, int i, int other, int place) {
        long below = Tens.power(place + 1);
        long change = Math.abs(all[other]) % below - Math.abs(row(i)) % below;
        int sign = row(i) < 0 ? -1 : 1;
        events.add(10L * sign * change, Code.of(way, where(i), place + lowest));
    }
}
