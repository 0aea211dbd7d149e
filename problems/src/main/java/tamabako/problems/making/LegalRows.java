package tamabako.problems.making;

import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// The rows of one length that may be worked next on rods as they stand.
///
/// They are looked at digit by digit from the unit rod, with the carry (or borrow) that goes on to
/// the left: on each rod its own digit goes first, and then the carry from the right.
final class LegalRows {

    private static final int NOT_ALLOWED = -1;

    /// Gets each row with the bits of the techniques that it uses.
    interface Visitor {
        void row(long row, int uses);
    }

    private final Rods rods;
    private final int allowed;
    private final boolean adding;
    private final int length;

    /// The bits that a carry out of the row's highest rod uses on its way, or NOT_ALLOWED.
    private final int carryAtEnd;

    LegalRows(Rods rods, int allowed, boolean adding, int length) {
        this.rods = rods;
        this.allowed = allowed;
        this.adding = adding;
        this.length = length;
        this.carryAtEnd = carryAtEnd();
    }

    /// Shows every one of them to `visitor`.
    void forEach(Visitor visitor) {
        visit(0, 0, 0, 0, visitor);
    }

    private void visit(int place, int carry, long row, int uses, Visitor visitor) {
        if (place == length) {
            if (carry == 0) {
                visitor.row(row, uses);
            } else if (carryAtEnd != NOT_ALLOWED) {
                visitor.row(row, uses | carryAtEnd);
            }
            return;
        }
        for (int digit = leastDigit(place); digit <= 9; digit++) {
            int on = enter(place, digit, carry);
            if (on != NOT_ALLOWED) {
                long longer = row + digit * Powers.of(place);
                visit(place + 1, on & 1, longer, uses | on >> 1, visitor);
            }
        }
    }

    /// In how many ways the digits below each place can be chosen, by the carry that they give; at
    /// the index of the length, in how many ways all can.
    long[][] count() {
        long[][] ways = new long[length + 1][2];
        ways[0][0] = 1;
        for (int place = 0; place < length; place++) {
            for (int choice = 2 * leastDigit(place); choice < 20; choice++) {
                int on = enter(place, choice / 2, choice % 2);
                if (on != NOT_ALLOWED) {
                    ways[place + 1][on & 1] += ways[place][choice % 2];
                }
            }
        }
        if (carryAtEnd == NOT_ALLOWED) {
            ways[length][1] = 0;
        }
        return ways;
    }

    /// One of them, each equally likely, from the ways that are counted; there must be one.
    long draw(long[][] ways, Draws draws) {
        long row = 0;
        int carry = draws.below(ways[length][0] + ways[length][1]) < ways[length][0] ? 0 : 1;
        for (int place = length - 1; place >= 0; place--) {
            long left = draws.below(ways[place + 1][carry]);
            int choice = 2 * leastDigit(place) - 1;
            while (left >= 0) {
                choice++;
                int on = enter(place, choice / 2, choice % 2);
                if (on != NOT_ALLOWED && (on & 1) == carry) {
                    left -= ways[place][choice % 2];
                }
            }
            row += choice / 2 * Powers.of(place);
            carry = choice % 2;
        }
        return row;
    }

    private int leastDigit(int place) {
        return place == length - 1 ? 1 : 0;
    }

    /// What comes of entering `digit` and then a carry on the rod of `place`: the bits used,
    /// shifted left by one, and the carry that goes on; or NOT_ALLOWED.
    private int enter(int place, int digit, int carry) {
        int first = step(rods.digit(place), digit);
        if (first == NOT_ALLOWED || carry == 0) {
            return first;
        }
        int sign = adding ? 1 : -1;
        int held = Math.floorMod(rods.digit(place) + sign * digit, 10);
        int second = step(held, 1);
        return second == NOT_ALLOWED ? NOT_ALLOWED : first | second;
    }

    private int step(int held, int digit) {
        if (digit == 0) {
            return 0;
        }
        int bit = Rods.bit(adding, held, digit);
        boolean passes = adding ? held + digit > 9 : held < digit;
        return (bit & ~allowed) != 0 ? NOT_ALLOWED : bit << 1 | (passes ? 1 : 0);
    }

    private int carryAtEnd() {
        int uses = 0;
        for (int place = length; place < Rods.MOST_RODS; place++) {
            int on = enter(place, 0, 1);
            if (on == NOT_ALLOWED) {
                return NOT_ALLOWED;
            }
            uses |= on >> 1;
            if ((on & 1) == 0) {
                return uses;
            }
        }
        return NOT_ALLOWED;
    }
}
