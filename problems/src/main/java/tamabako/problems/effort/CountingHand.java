package tamabako.problems.effort;

import tamabako.frame.Technique;

/// A hand on a frame of digits that counts what it does and makes no object for it; the same rules
/// as [tamabako.frame.Hand], to which tests hold it.
final class CountingHand {

    /// More rods to each side of the unit rod than the longest frame has.
    private static final int MIDDLE = 40;

    private static final int RODS = 2 * MIDDLE + 1;

    private final byte[] rods = new byte[RODS];
    private final HandCount count;

    CountingHand(HandCount count) {
        this.count = count;
    }

    int digit(int rod) {
        return rods[rod + MIDDLE];
    }

    void add(int rod, int digit) {
        if (digit != 0) {
            int held = digit(rod);
            Technique technique = Technique.ofAdding(held, digit);
            move(rod, technique, (held + digit) % 10);
            if (technique.passesTen()) {
                add(rod + 1, 1);
            }
        }
    }

    void take(int rod, int digit) {
        if (digit != 0) {
            int held = digit(rod);
            Technique technique = Technique.ofTaking(held, digit);
            if (technique.passesTen()) {
                take(rod + 1, 1);
            }
            move(rod, technique, (held - digit + 10) % 10);
        }
    }

    private void move(int rod, Technique technique, int after) {
        count.step(technique, digit(rod), after);
        rods[rod + MIDDLE] = (byte) after;
    }

    /// Sets the digits from the left, the first on `rod`, and counts them.
    void set(int rod, int[] digits) {
        for (int i = 0; i < digits.length; i++) {
            add(rod - i, digits[i]);
        }
    }

    /// Adds a two-digit product on `tensRod` and the rod right of it.
    void addProduct(int tensRod, int product) {
        if (product > 0) {
            count.product();
            add(tensRod, product / 10);
            add(tensRod - 1, product % 10);
        }
    }

    /// Takes a two-digit product from `tensRod` and the rod right of it.
    void takeProduct(int tensRod, int product) {
        if (product > 0) {
            count.product();
            take(tensRod, product / 10);
            take(tensRod - 1, product % 10);
        }
    }

    /// What the rods from `from` up to `to` read, and no further than to see that it is 1000 or
    /// more.
    int standing(int from, int to) {
        int number = 0;
        for (int rod = to; rod >= from && number < 1000; rod--) {
            number = 10 * number + digit(rod);
        }
        return number;
    }
}
