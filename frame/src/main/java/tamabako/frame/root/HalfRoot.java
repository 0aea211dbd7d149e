package tamabako.frame.root;

import tamabako.frame.Cause;
import tamabako.frame.Hand;
import tamabako.frame.Setup;
import tamabako.frame.Working;
import tamabako.frame.quotient.QuotientDigit;
import tamabako.frame.quotient.Spot;

/// A square root by half-nine-nine (han-kuku): the remainder is halved once, then divided by the
/// root itself, and half of the square of every new digit is taken off.
///
/// With the first digit on rod r the units of the first group stand on r - 2. After k digits the
/// half remainder is at most the root, so less than `10^k` of the k-th group: it stands right of
/// rod r - k, where the next digit goes. Source: F. Kato's method in Heffelfinger and Flom, Abacus:
/// Mystery of the Bead.
final class HalfRoot {

    private static final int DISTANCE = 2;

    private final RootSum sum;
    private final RootLayout layout;
    private final RootGround ground;
    private final Hand hand;
    private final int first;

    private HalfRoot(RootSum sum, Setup setup) {
        this.sum = sum;
        this.layout = layout(sum);
        this.ground = new RootGround(layout, setup);
        this.hand = ground.hand();
        this.first = sum.firstRod();
    }

    /// One rod is spare at the left. At the right the half square of the last digit may have
    /// tenths, and the remainder may have a half beyond the radicand's last place.
    private static RootLayout layout(RootSum sum) {
        int first = sum.firstRod();
        int further = sum.further();
        int left = Math.max(first, 0) + 1;
        int tenths = first - DISTANCE - 2 * further - 1;
        int half = first - DISTANCE - 2 * first + sum.radicand().lastPlace() - 1;
        int lowest = further > 0 ? Math.min(tenths, half) : first - DISTANCE;
        return new RootLayout(
                sum, DISTANCE, new RootLayout.Left(left, first < 0 ? 0 : 1, left), lowest);
    }

    static Working work(RootSum sum, Setup setup) {
        HalfRoot root = new HalfRoot(sum, setup);
        if (sum.further() >= 0 && !sum.radicand().isZero()) {
            root.ground.setFirst();
        }
        boolean halved = sum.further() > 0 && !root.ground.isClearFrom(root.first - 1);
        if (halved) {
            root.halve();
            root.run();
        }
        return root.ground.finish(halved ? 2 : 1);
    }

    /// Halves the remainder from the right: half of an odd digit leaves a five for the rod to its
    /// right, which has been halved and has room for it.
    private void halve() {
        for (int rod = ground.lowest(); rod < first; rod++) {
            int digit = hand.digit(rod);
            boolean odd = digit % 2 == 1;
            if (odd) {
                ground.reach(rod - 1);
            }
            Cause cause = new Cause.Halved(rod - layout.radicandUnit());
            hand.take(rod, digit - digit / 2, cause);
            hand.add(rod - 1, odd ? 5 : 0, cause);
        }
    }

    private void run() {
        for (int index = 2; index <= sum.further() + 1; index++) {
            int rod = first - index + 1;
            if (ground.isClearFrom(rod)) {
                return;
            }
            work(index, rod);
        }
    }

    private void work(int index, int rod) {
        int[] root = ground.digits(first, rod + 1);
        QuotientDigit digit = new QuotientDigit(hand, Spot.of(rod), root, new OfRoot(index, rod));
        if (digit.fits()) {
            ground.reach(rod - index - 1);
            digit.tryBy(root[0]);
            digit.takeProducts();
            takeHalfSquare(digit, index, rod - index - 1);
        }
    }

    /// Takes 0.5 to 40.5. A digit that is even needs no rod for tenths.
    private void takeHalfSquare(QuotientDigit digit, int index, int units) {
        digit.leaveRoomFor(b -> 5 * b * b, units - 1);
        int b = digit.digit();
        ground.reach(b % 2 == 0 ? units : units - 1);
        hand.takeNumber(units - 1, 5 * b * b, new Cause.HalfSquareTaken(index, b));
    }
}
