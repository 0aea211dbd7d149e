package tamabako.problems.making.column;

import java.util.Set;
import tamabako.frame.Technique;
import tamabako.frame.walk.Tally;
import tamabako.problems.making.draw.Powers;

/// The rows of one length that may be worked next on a total, by the allowed techniques alone.
///
/// They are looked at digit by digit from the last, with the carry (or borrow) that goes on to the
/// left: on each rod its own digit goes first, and then the carry from the right.
final class RowSteps {

    private static final int NOT_ALLOWED = -1;

    /// Gets each row with the techniques that it uses, as bits of [Tally#bits].
    interface Visitor {
        void row(long row, int uses);
    }

    /// What comes of a digit on a rod: the bits used, shifted left by one, and the carry that goes
    /// on. By sign, digit held and digit.
    private final int[] steps = new int[200];

    private long total;
    private int sign;
    private int length;

    RowSteps(Set<Technique> allowed) {
        for (int held = 0; held <= 9; held++) {
            for (int digit = 1; digit <= 9; digit++) {
                steps[10 * held + digit] = step(allowed, Technique.ofAdding(held, digit));
                steps[100 + 10 * held + digit] = step(allowed, Technique.ofTaking(held, digit));
            }
        }
    }

    private static int step(Set<Technique> allowed, Technique technique) {
        int bit = Tally.bits(Set.of(technique));
        return allowed.contains(technique)
                ? (bit << 1) | (technique.passesTen() ? 1 : 0)
                : NOT_ALLOWED;
    }

    /// Shows every row of `digits` digits that may be added to `held`, or taken from it where it is
    /// no more than that.
    void forEach(long held, boolean minus, int digits, Visitor visitor) {
        total = held;
        sign = minus ? 100 : 0;
        length = digits;
        visit(0, 0, 0, 0, visitor);
    }

    private void visit(int place, int carry, long row, int uses, Visitor visitor) {
        if (place == length) {
            int end = carry == 0 ? 0 : carryOn();
            if (end != NOT_ALLOWED) {
                visitor.row(row, uses | end);
            }
            return;
        }
        for (int digit = place == length - 1 ? 1 : 0; digit <= 9; digit++) {
            int on = enter(place, digit, carry);
            if (on != NOT_ALLOWED) {
                long longer = row + digit * Powers.of(place);
                visit(place + 1, on & 1, longer, uses | (on >> 1), visitor);
            }
        }
    }

    /// Enters `digit` and then a carry on the rod of `place`.
    private int enter(int place, int digit, int carry) {
        int held = (int) (total / Powers.of(place) % 10);
        int first = steps[sign + 10 * held + digit];
        if (first == NOT_ALLOWED || carry == 0) {
            return first;
        }
        int then = Math.floorMod(sign == 0 ? held + digit : held - digit, 10);
        int second = steps[sign + 10 * then + 1];
        return second == NOT_ALLOWED ? NOT_ALLOWED : first | second;
    }

    /// The bits that a carry out of the row's highest rod uses on its way. A borrow that finds no
    /// bead to take is not allowed.
    private int carryOn() {
        int uses = 0;
        for (int place = length; place < 18; place++) {
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
