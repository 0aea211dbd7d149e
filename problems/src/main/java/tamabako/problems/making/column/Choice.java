package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import tamabako.problems.making.draw.Draws;

/// A choice among things that stand for so many columns each: a thing is drawn exactly as often as
/// there are columns behind it.
///
/// All columns are laid into slots of one size, a power of two of them, so that at most two things
/// share a slot: the slot's own below a border, and one other (Walker, "An efficient method for
/// generating discrete random variables with general distributions", 1977). A draw is a slot and a
/// fraction of it, whose first bits nearly always tell on which side of the border it lies; where
/// they are those of the border itself, more bits are drawn until they differ.
final class Choice {

    /// The most things to choose among.
    static final int MOST = 1 << 16;

    private static final int BITS = 48;
    private static final int MORE_BITS = 62;
    private static final long[] NOT_FILLED = new long[0];

    private final BigInteger[] counts;
    private final BigInteger all;
    private final int slotBits;

    /// By slot: the first bits of its border as a fraction of the slot, and the other thing in it.
    /// Filled before the first draw.
    private long[] slots = NOT_FILLED;

    private Choice(BigInteger[] counts) {
        this.counts = counts;
        this.all = Arrays.stream(counts).reduce(BigInteger.ZERO, BigInteger::add);
        this.slotBits = Integer.SIZE - Integer.numberOfLeadingZeros(counts.length - 1);
    }

    /// @param counts one at least, and at most [#MOST]
    static Choice of(List<BigInteger> counts) {
        return new Choice(counts.toArray(BigInteger[]::new));
    }

    private long[] fill() {
        long[] ready = new long[1 << slotBits];
        Slots filled = Slots.fill(counts, all, ready.length);
        for (int i = 0; i < ready.length; i++) {
            ready[i] = slot(i, filled);
        }
        return ready;
    }

    private long slot(int index, Slots filled) {
        int other = filled.other(index);
        long border =
                other == index
                        ? 0
                        : filled.own(index).shiftLeft(BITS).divide(all).longValueExact();
        return (border << (Long.SIZE - BITS)) | other;
    }

    /// How many columns there are behind all of them.
    BigInteger all() {
        return all;
    }

    /// How many columns there are behind one of them.
    BigInteger count(int index) {
        return counts[index];
    }

    /// The index of one of them; there must be a column behind some.
    int draw(Draws draws) {
        if (slots.length == 0) {
            slots = fill();
        }
        long drawn = draws.bits();
        int slot = (int) ((drawn >>> 1) >>> (Long.SIZE - 1 - slotBits));
        long fraction = (drawn << slotBits) >>> (Long.SIZE - BITS);
        long border = slots[slot] >>> (Long.SIZE - BITS);
        int other = (int) slots[slot] & (MOST - 1);
        if (fraction == border) {
            return onBorder(slot, draws);
        }
        return fraction < border ? slot : other;
    }

    /// Goes on with a draw whose first bits are those of the border.
    private int onBorder(int slot, Draws draws) {
        Slots filled = Slots.fill(counts, all, slots.length);
        BigInteger left = filled.own(slot).shiftLeft(BITS).mod(all);
        while (left.signum() > 0) {
            BigInteger[] border = left.shiftLeft(MORE_BITS).divideAndRemainder(all);
            int side = Long.compare(draws.bits() >>> 2, border[0].longValueExact());
            if (side != 0) {
                return side < 0 ? slot : filled.other(slot);
            }
            left = border[1];
        }
        return filled.other(slot);
    }
}
