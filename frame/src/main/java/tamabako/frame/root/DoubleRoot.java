package tamabako.frame.root;

import tamabako.frame.Cause;
import tamabako.frame.Hand;
import tamabako.frame.Setup;
import tamabako.frame.Working;
import tamabako.frame.quotient.QuotientDigit;
import tamabako.frame.quotient.Spot;

/// A square root by the double root: the remainder is divided by twice the root, the square of
/// every new digit is taken off, the digit is doubled in place, and what stands there is halved in
/// the end.
///
/// With the first digit on rod r the units of the first group stand on r - 3. After k digits the
/// remainder is at most twice the root, so less than `2 * 10^k` of the k-th group: it stands right
/// of rod r - k, where the next digit goes. Doubled digits are even, so a carry from a doubled
/// digit goes no further than one rod; the first may carry to r + 1. The last digit is divided by
/// nothing and stays undoubled. Source: the double-root way of Kojima, Advanced Abacus (1963),
/// after Using an Abacus, Wikibooks.
final class DoubleRoot {

    private static final int DISTANCE = 3;

    private final RootSum sum;
    private final RootGround ground;
    private final Hand hand;
    private final int first;

    private DoubleRoot(RootSum sum, Setup setup) {
        this.sum = sum;
        this.ground = new RootGround(layout(sum), setup);
        this.hand = ground.hand();
        this.first = sum.firstRod();
    }

    private static RootLayout layout(RootSum sum) {
        int left = Math.max(sum.firstRod() + 1, 0) + 1;
        int lowest = sum.firstRod() - DISTANCE - 2 * Math.max(sum.further(), 0);
        return new RootLayout(sum, DISTANCE, new RootLayout.Left(left, 0, left), lowest);
    }

    static Working work(RootSum sum, Setup setup) {
        DoubleRoot root = new DoubleRoot(sum, setup);
        if (sum.further() >= 0 && !sum.radicand().isZero()) {
            root.ground.setFirst();
            root.run();
        }
        return root.ground.finish(1);
    }

    private void run() {
        int rod = first - 1;
        for (int index = 2; index <= sum.further() + 1 && !ground.isClearFrom(rod); index++) {
            hand.add(rod + 1, hand.digit(rod + 1), new Cause.Doubled(index - 1));
            work(index, rod);
            rod--;
        }
        halve(rod + 2);
    }

    private void work(int index, int rod) {
        int[] twice = ground.digits(first + 1, rod + 1);
        int firstOfTwice = hand.digit(first + 1) > 0 ? first + 1 : first;
        int units = rod - index - 2;
        Spot spot = new Spot(rod, firstOfTwice - index - 2);
        QuotientDigit digit = new QuotientDigit(hand, spot, twice, new OfRoot(index, rod));
        if (digit.fits()) {
            ground.reach(units);
            digit.tryBy(twice[0]);
            digit.takeProducts();
            digit.leaveRoomFor(b -> b * b, units);
            int b = digit.digit();
            hand.takeNumber(units, b * b, new Cause.SquareTaken(index, b));
        }
    }

    /// Halves the doubled digits, the last of them on rod `last`, from the right.
    private void halve(int last) {
        for (int rod = last; rod <= first + 1; rod++) {
            int digit = hand.digit(rod);
            Cause cause = new Cause.Halved(rod);
            hand.take(rod, digit - digit / 2, cause);
            hand.add(rod - 1, digit % 2 * 5, cause);
        }
    }
}
