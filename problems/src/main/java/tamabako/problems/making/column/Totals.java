package tamabako.problems.making.column;

/// The running totals of a column.
final class Totals {

    private long last;
    private int dips;
    private int below;
    private int firstBelow;

    void add(long[] numbers, long[] sides) {
        long total = 0;
        long side = 0;
        dips = 0;
        below = 0;
        firstBelow = 0;
        for (int i = 0; i < numbers.length; i++) {
            total += (numbers[i] ^ (sides[i] >> 63)) - (sides[i] >> 63);
            long now = total >> 63;
            dips += (int) (side - now) & (int) -now;
            below -= (int) now;
            if (firstBelow == 0 && now < 0) {
                firstBelow = i + 1;
            }
            side = now;
        }
        last = total;
    }

    /// The answer.
    long last() {
        return last;
    }

    /// How often the total goes from zero or above to below zero.
    int dips() {
        return dips;
    }

    /// After how many rows it is below zero.
    int below() {
        return below;
    }

    /// The first row after which it is, counted from 1; 0 if there is none.
    int firstBelow() {
        return firstBelow;
    }
}
