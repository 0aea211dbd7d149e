package tamabako.insight.slip;

import java.util.function.LongUnaryOperator;

/// What may be taken for a product of two digits by a pupil who does not have the table by heart.
///
/// A neighbour in the same row of the table is the commonest; then the sum, a ten more or less, the
/// digits swapped, one more or less, and another product of the table that is close, such as 54 for
/// 7 times 8. Common practice, no published source.
final class TableSlips {

    private static final double NEIGHBOUR = 0.15;
    private static final double SUM = 0.1;
    private static final double SWAPPED = 0.1;
    private static final double TEN_OFF = 0.05;
    private static final double ONE_OFF = 0.05;
    private static final double CLOSE = 0.05;
    private static final double TIMES_ZERO = 1;

    /// Products of the table that are this close are taken for each other.
    private static final int CLOSE_BY = 3;

    private final int first;
    private final int second;
    private final LongUnaryOperator tenths;
    private final long code;
    private final Events events;

    /// @param tenths what a wrong product, given whole, does to the answer in tenths
    private TableSlips(int first, int second, LongUnaryOperator tenths, long code, Events events) {
        this.first = first;
        this.second = second;
        this.tenths = tenths;
        this.code = code;
        this.events = events;
    }

    /// Adds the slips of one partial product on `rod`, the rod of its units.
    static void add(int first, int second, int rod, LongUnaryOperator tenths, Events events) {
        int where = Code.product(first, second);
        long code = Code.of(Way.TABLE_SLIP, where, rod);
        new TableSlips(first, second, tenths, code, events).add();
    }

    private void add() {
        int product = first * second;
        int mark = events.mark();
        if (product == 0) {
            taken(first + second, TIMES_ZERO);
        } else {
            taken(product - first, NEIGHBOUR);
            taken(product + first, NEIGHBOUR);
            taken(product - second, NEIGHBOUR);
            taken(product + second, NEIGHBOUR);
            taken(first + second, SUM);
            taken(product % 10 * 10 + product / 10, SWAPPED);
            taken(product - 10, TEN_OFF);
            taken(product + 10, TEN_OFF);
            taken(product - 1, ONE_OFF);
            taken(product + 1, ONE_OFF);
            close(product);
        }
        events.share(mark, 1);
    }

    private void close(int product) {
        for (int other = product - CLOSE_BY; other <= product + CLOSE_BY; other++) {
            if (other > 0 && isInTable(other)) {
                taken(other, CLOSE);
            }
        }
    }

    private static boolean isInTable(int number) {
        for (int factor = 2; factor <= 9; factor++) {
            if (number % factor == 0 && number / factor >= 2 && number / factor <= 9) {
                return true;
            }
        }
        return false;
    }

    private void taken(int wrong, double weight) {
        if (wrong >= 0 && wrong <= 99 && wrong != first * second) {
            events.add(tenths.applyAsLong(wrong), Code.with(code, first * second, wrong), weight);
        }
    }
}
