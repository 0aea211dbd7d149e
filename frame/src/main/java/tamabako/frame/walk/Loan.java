package tamabako.frame.walk;

import tamabako.frame.Unworkable;

/// The loan that a total below zero is worked with, by the same rule as in
/// [tamabako.frame.column.ColumnWork]: one from the imagined rod above the longer of frame and row,
/// a larger one when it does not suffice, given back when the total has risen again.
///
/// Source: Heffelfinger and Flom, Abacus: Mystery of the Bead, negative numbers.
final class Loan {

    private static final int NONE = -1;

    private final int places;
    private int rod = NONE;

    /// A loan for numbers whose rod `places`, 0 to 14, is the unit rod.
    Loan(int places) {
        if (places < 0 || places >= PackedNumber.MOST_DIGITS) {
            throw new IllegalArgumentException("A walk has 0 to 14 decimals, not " + places + ".");
        }
        this.places = places;
    }

    /// Says that the total needs a rod more than a walk has.
    static Unworkable frameTooShort() {
        return new Unworkable(
                new Unworkable.Reason.FrameTooShort(PackedNumber.RODS + 1, PackedNumber.RODS));
    }

    void clear() {
        rod = NONE;
    }

    boolean runs() {
        return rod != NONE;
    }

    /// What is lent, in units of the last place; 0 if nothing is.
    long lent() {
        return runs() ? PackedNumber.size(1L << (4 * rod)) : 0;
    }

    /// Lends for `row`, which takes more than `held`; gives what has to be added before it.
    long lend(long held, long row) {
        int old = rod;
        long size = row & ~PackedNumber.MINUS;
        rod = Math.max(places, Math.max(wholeDigits(size), wholeDigits(held)));
        rod = Math.max(rod, old + 1);
        if (Long.compareUnsigned(size, held | more(old)) > 0) {
            rod++;
        }
        if (rod >= PackedNumber.RODS) {
            rod = old;
            throw frameTooShort();
        }
        return more(old);
    }

    /// Gives the loan back if `held` holds it; what has to be taken, or 0.
    long giveBack(long held) {
        if (!runs() || held >>> (4 * rod) == 0) {
            return 0;
        }
        long back = (1L << (4 * rod)) | PackedNumber.MINUS;
        rod = NONE;
        return back;
    }

    /// The new loan less the old one: a one, or a run of nines where the old one was.
    private long more(int old) {
        if (old == NONE) {
            return 1L << (4 * rod);
        }
        long below = rod < PackedNumber.RODS ? (1L << (4 * rod)) - 1 : -1;
        return 0xCCCC_CCCC_CCCC_CCCCL & below & -(1L << (4 * old));
    }

    private int wholeDigits(long size) {
        return size == 0 ? places + 1 : PackedNumber.digits(size);
    }
}
