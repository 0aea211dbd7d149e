package tamabako.insight.slip;

/// The slips that can be made in a column that is worked in the head, shown or called: of ear, eye
/// and memory. No bead is touched, so none of the slips of beads and rods are here.
///
/// Source: what teachers of mental and called work name (a number misheard, its place misheard, a
/// row dropped or taken in twice, digits swapped, a carry lost, the total not kept); common
/// practice, no published list with frequencies.
final class MindSlips {

    /// How much of an occasion to miss the sign a plus row is that follows a minus row.
    private static final double PLUS_AFTER_MINUS = 0.3;

    private final FastColumn column;
    private final int lowest;
    private final boolean called;
    private final Events events;

    /// @param lowest the power of ten of the rows' last place
    /// @param called whether the rows are heard, not seen
    MindSlips(FastColumn column, int lowest, boolean called, Events events) {
        this.column = column;
        this.lowest = lowest;
        this.called = called;
        this.events = events;
    }

    /// Adds them.
    void add() {
        carriesLost(column.log(0), lowest, Effect.ADDED, events);
        long total = 0;
        for (int i = 0; i < column.rows().length; i++) {
            long row = column.rows()[i];
            int where = Code.row(i + 1);
            new ReadingSlips(where, lowest, called, Effect.ADDED, events).add(row);
            if (called) {
                placeMisheard(row, where);
            }
            events.add(-10 * row, Code.of(Way.ROW_SKIPPED, where));
            events.add(10 * row, Code.of(Way.ROW_TWICE, where));
            sign(i, where);
            total += row;
            if (i + 1 < column.rows().length) {
                kept(total, where);
            }
        }
    }

    /// A carry or borrow that the working needs is not kept in mind.
    static void carriesLost(StepLog log, int lowest, Effect effect, Events events) {
        for (int i = 0; i < log.size(); i++) {
            StepLog.Role role = log.role(i);
            if (role == StepLog.Role.CARRY || role == StepLog.Role.BORROW) {
                boolean carry = role == StepLog.Role.CARRY;
                long change = (carry ? -1 : 1) * Tens.power(log.rod(i));
                Way way = carry ? Way.CARRY_LOST : Way.BORROW_LOST;
                long code = Code.of(way, log.where(i), log.rod(i) + lowest);
                events.add(effect.tenths(change), code);
            }
        }
    }

    private void placeMisheard(long row, int where) {
        int mark = events.mark();
        events.add(90 * row, Code.of(Way.PLACE_HEARD_TOO_LARGE, where));
        if (row % 10 == 0) {
            events.add(10 * (row / 10 - row), Code.of(Way.PLACE_HEARD_TOO_SMALL, where));
        }
        events.share(mark, 1);
    }

    private void sign(int i, int where) {
        long row = column.rows()[i];
        if (row < 0) {
            events.add(-20 * row, Code.of(Way.MINUS_READ_AS_PLUS, where), 1);
        } else if (i > 0 && column.rows()[i - 1] < 0) {
            events.add(-20 * row, Code.of(Way.PLUS_READ_AS_MINUS, where), PLUS_AFTER_MINUS);
        }
    }

    /// The total so far is not kept as it was: one digit is one more or less, or two are swapped.
    private void kept(long total, int where) {
        int sign = total < 0 ? -1 : 1;
        long size = Math.abs(total);
        for (int place = 0; place < Tens.length(size); place++) {
            int digit = Tens.digit(size, place);
            long code = Code.of(Way.TOTAL_DIGIT_CHANGED, where, place + lowest);
            int mark = events.mark();
            for (int other = Math.max(0, digit - 1); other <= Math.min(9, digit + 1); other++) {
                long change = (long) sign * (other - digit) * Tens.power(place);
                if (other != digit) {
                    events.add(10 * change, Code.with(code, digit, other));
                }
            }
            int left = Tens.digit(size, place + 1);
            long swapped = 9L * sign * (digit - left) * Tens.power(place);
            if (place + 1 < Tens.length(size) && left != digit) {
                long swap = Code.of(Way.TOTAL_DIGITS_SWAPPED, where, place + lowest);
                events.add(10 * swapped, Code.with(swap, left, digit));
            }
            events.share(mark, 1);
        }
    }
}
