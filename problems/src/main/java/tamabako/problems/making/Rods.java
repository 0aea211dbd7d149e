package tamabako.problems.making;

import java.util.Arrays;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.draw.Powers;

/// The fast walk of makers: the rods of a modern frame as digits, on which rows are added and taken
/// as a hand does it, noting only which techniques were used.
///
/// Rod 0 holds the last digit of the rows. It follows the same rules as
/// [tamabako.frame.column.ColumnWork] and is tested equal to it.
final class Rods {

    static final int MOST_RODS = 24;
    private static final int NONE = -1;
    private static final byte[][] ADDING = table(true);
    private static final byte[][] TAKING = table(false);

    private final int[] digits = new int[MOST_RODS];
    private final int places;
    private long shown;
    private int loan = NONE;
    private int used;

    /// Clear rods.
    ///
    /// @param places how many rods stand right of the unit rod
    Rods(int places) {
        this.places = places;
    }

    /// The bit of a technique in a set of techniques.
    static int bit(Technique technique) {
        return switch (technique) {
            case DIRECT -> 1;
            case FIVE_COMPLEMENT -> 2;
            case TEN_COMPLEMENT -> 4;
            case TEN_WITH_FIVE -> 8;
        };
    }

    /// The bits of all of `techniques`.
    static int bits(Set<Technique> techniques) {
        return techniques.stream().mapToInt(Rods::bit).reduce(0, (all, one) -> all | one);
    }

    /// The bit of the technique that adds `digit` to a rod holding `held`, or takes it.
    static int bit(boolean adding, int held, int digit) {
        return (adding ? ADDING : TAKING)[held][digit];
    }

    /// Sets `total`, 0 or more; any loan is forgotten.
    void set(long total) {
        Arrays.fill(digits, 0);
        shown = total;
        loan = NONE;
        long rest = total;
        for (int rod = 0; rest > 0; rod++) {
            digits[rod] = (int) (rest % 10);
            rest /= 10;
        }
    }

    /// The running total.
    long total() {
        return loan == NONE ? shown : shown - Powers.of(loan);
    }

    /// The digit on a rod now.
    int digit(int rod) {
        return digits[rod];
    }

    /// Works a row, a minus row with its sign, from its highest digit down. Where the total falls
    /// below zero, the loan is taken and later given back as ColumnWork does.
    ///
    /// @return the bits of the techniques used
    int work(long row) {
        used = 0;
        if (shown + row < 0) {
            borrowFor(row);
        }
        long size = Math.abs(row);
        for (int place = Powers.digits(size) - 1; place >= 0; place--) {
            step(row > 0, place, (int) (size / Powers.of(place) % 10));
        }
        shown += row;
        if (loan != NONE && shown >= Powers.of(loan)) {
            step(false, loan, 1);
            shown -= Powers.of(loan);
            loan = NONE;
        }
        return used;
    }

    private void borrowFor(long row) {
        int rod = Math.max(rodsOf(Math.abs(row)), rodsOf(shown));
        long old = 0;
        if (loan != NONE) {
            rod = Math.max(rod, loan + 1);
            old = Powers.of(loan);
        }
        if (total() + Powers.of(rod) + row < 0) {
            rod++;
        }
        long more = Powers.of(rod) - old;
        for (int place = rod; place >= (loan == NONE ? rod : loan); place--) {
            step(true, place, (int) (more / Powers.of(place) % 10));
        }
        shown += more;
        loan = rod;
    }

    /// How many rods a number takes; zero takes those up to the unit rod.
    private int rodsOf(long number) {
        return number == 0 ? places + 1 : Math.max(places, Powers.digits(number));
    }

    private void step(boolean adding, int rod, int digit) {
        if (digit == 0) {
            return;
        }
        if (adding) {
            add(rod, digit);
        } else {
            take(rod, digit);
        }
    }

    private void add(int rod, int digit) {
        int held = digits[rod];
        used |= ADDING[held][digit];
        if (held + digit > 9) {
            digits[rod] = held + digit - 10;
            add(rod + 1, 1);
        } else {
            digits[rod] = held + digit;
        }
    }

    private void take(int rod, int digit) {
        int held = digits[rod];
        used |= TAKING[held][digit];
        if (held < digit) {
            take(rod + 1, 1);
            digits[rod] = held - digit + 10;
        } else {
            digits[rod] = held - digit;
        }
    }

    private static byte[][] table(boolean adding) {
        byte[][] table = new byte[10][10];
        for (int held = 0; held <= 9; held++) {
            for (int digit = 1; digit <= 9; digit++) {
                Technique technique =
                        adding ? Technique.ofAdding(held, digit) : Technique.ofTaking(held, digit);
                table[held][digit] = (byte) bit(technique);
            }
        }
        return table;
    }
}
