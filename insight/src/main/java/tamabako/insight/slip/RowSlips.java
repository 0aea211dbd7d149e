package tamabako.insight.slip;

/// The slips with one row of a column: its digits misread or put on rods beside their own, the row
/// left out, taken twice or moved, its sign missed, its digits mixed with those of a neighbour.
final class RowSlips {

    /// How much of an occasion to miss the sign a plus row is that follows a minus row.
    static final double PLUS_AFTER_MINUS = 0.3;

    private final long row;
    private final int where;
    private final int number;
    private final long frame;
    private final long[] all;
    private final int lowest;
    private final Events events;

    /// The slips with row `i` of `column`.
    ///
    /// @param all the rows of the whole column
    /// @param lowest the power of ten of the rows' last place
    RowSlips(FastColumn column, int i, long[] all, int lowest, Events events) {
        this.row = column.rows()[i];
        this.where = column.where(i);
        this.number = column.rowsBefore() + i;
        this.frame = column.frameBefore(i);
        this.all = all;
        this.lowest = lowest;
        this.events = events;
    }

    /// Adds them all.
    void add() {
        reading().add(row);
        for (int place = 0; place < Tens.length(Math.abs(row)); place++) {
            neighbourRods(place);
        }
        events.after(where, 0);
        wholeRow();
        sign();
        lineJumps();
    }

    /// Adds those that make the difference `sought`.
    void add(Sought sought) {
        reading().add(row, sought);
        if (sought.isNinefold()) {
            int length = Tens.length(Math.abs(row));
            int last = Math.min(length - 1, sought.place() + 1);
            for (int place = sought.place(); place <= last; place++) {
                neighbourRods(place);
            }
        }
        events.after(where, 0);
        wholeRow();
        sign();
        lineJumps(sought.units());
    }

    private ReadingSlips reading() {
        return new ReadingSlips(where, lowest, false, Effect.ADDED, events);
    }

    private void neighbourRods(int place) {
        int digit = Tens.digit(Math.abs(row), place);
        int mark = events.mark();
        events.after(where, place);
        onRod(Way.DIGIT_ONE_ROD_LEFT, place, digit, digit * Tens.power(place + 1));
        if (place > 0) {
            onRod(Way.DIGIT_ONE_ROD_RIGHT, place, digit, digit * Tens.power(place - 1));
        }
        events.share(mark, 1);
    }

    /// The digit counts `entered`; what is taken must be there to be taken.
    private void onRod(Way way, int place, int digit, long entered) {
        long meant = digit * Tens.power(place);
        long code = Code.with(Code.of(way, where, place + lowest), digit);
        if (row >= 0) {
            events.add(10 * (entered - meant), code);
            return;
        }
        long taken = -row - -row % Tens.power(place + 1);
        if (frame - taken >= entered || events.omit(Omission.BEAD_CHECK)) {
            events.add(10 * (meant - entered), code);
        }
    }

    private void wholeRow() {
        int mark = events.mark();
        events.add(90 * row, Code.of(Way.ROW_ONE_ROD_LEFT, where));
        // The last digit falls right of the unit rod, where it is not read.
        events.add(10 * (row / 10 - row), Code.of(Way.ROW_ONE_ROD_RIGHT, where));
        events.share(mark, 1);
        events.add(-10 * row, Code.of(Way.ROW_SKIPPED, where));
        events.add(10 * row, Code.of(Way.ROW_TWICE, where));
    }

    private void sign() {
        if (row < 0) {
            events.add(-20 * row, Code.of(Way.MINUS_READ_AS_PLUS, where), 1);
        } else if (number > 0 && all[number - 1] < 0) {
            events.add(-20 * row, Code.of(Way.PLUS_READ_AS_MINUS, where), PLUS_AFTER_MINUS);
        }
    }

    /// From some place down, the digits of the row above or below are read.
    private void lineJumps() {
        if (number > 0) {
            jumps(Way.LINE_JUMP_ABOVE, number - 1);
        }
        if (number + 1 < all.length) {
            jumps(Way.LINE_JUMP_BELOW, number + 1);
        }
    }

    private void jumps(Way way, int other) {
        int length = Tens.length(Math.abs(row));
        for (int place = 0; place + 1 < length; place++) {
            jump(way, other, place, length);
        }
    }

    /// Those that change the answer by `units`.
    private void lineJumps(long units) {
        if (units == 0) {
            return;
        }
        if (number > 0) {
            jumps(Way.LINE_JUMP_ABOVE, number - 1, units);
        }
        if (number + 1 < all.length) {
            jumps(Way.LINE_JUMP_BELOW, number + 1, units);
        }
    }

    /// Where the last digits of the other row are read, the two rows and the change agree in these
    /// digits; so do their last bits, which is soon seen.
    private void jumps(Way way, int other, long units) {
        long change = row < 0 ? -units : units;
        long left = Math.abs(all[other]) - Math.abs(row) - change;
        int digits = Tens.length(Math.abs(units));
        if ((left & ((1L << digits) - 1)) != 0 || left % Tens.power(digits) != 0) {
            return;
        }
        int length = Tens.length(Math.abs(row));
        for (int place = digits - 1; place + 1 < length; place++) {
            jump(way, other, place, length);
        }
    }

    private void jump(Way way, int other, int place, int length) {
        long below = Tens.power(place + 1);
        long change = Math.abs(all[other]) % below - Math.abs(row) % below;
        int sign = row < 0 ? -1 : 1;
        long code = Code.of(way, where, place + lowest);
        events.add(10L * sign * change, code, jumpWeighs(way, length));
    }

    /// The weight of a jump from one of the digits of a row: the eye leaves it at any of them as
    /// likely, and goes up as often as down. Where it leaves the row before its first digit,
    /// another row is read, and where there is no row above or below, there is no jump.
    static double jumpWeighs(Way way, int length) {
        return Weights.of(way) / (2 * length);
    }
}
