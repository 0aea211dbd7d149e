package tamabako.frame.root;

import tamabako.frame.Cause;
import tamabako.frame.Hand;
import tamabako.frame.Setup;
import tamabako.frame.Working;
import tamabako.frame.quotient.Division;
import tamabako.frame.quotient.QuotientDigit;
import tamabako.frame.quotient.Spot;

/// A cube root by the triple root. With A the root so far and b the next digit, the remainder
/// `30Ab(10A + b) + b³` is divided by 3A as far as the stopping rod; from the quotient `b(10A + b)`
/// first Ab, then b² is taken; what is left of it is multiplied by 3A and added back; then b³ is
/// taken. Where b turns out 0, the quotient stands and is divided on for the next digit.
///
/// Source: F. Kato's method in Heffelfinger and Flom, Abacus: Mystery of the Bead, cube roots.
/// Where the numbers stand is in [CubeLayout].
final class CubeRoot {

    private final RootSum sum;
    private final Setup setup;
    private final RootLayout layout;
    private final RootGround ground;
    private final Hand hand;
    private final int first;
    private final int triples;

    private CubeRoot(RootSum sum, Setup setup, int triples) {
        this.sum = sum;
        this.setup = setup;
        this.layout = CubeLayout.of(sum, triples);
        this.ground = new RootGround(layout, setup);
        this.hand = ground.hand();
        this.first = sum.firstRod();
        this.triples = triples;
    }

    /// Lays the frame out for as few digits of the triple as the root turns out to need: an exact
    /// root ends early.
    static Working work(RootSum sum, Setup setup) {
        int triples = Math.clamp(sum.further(), 0, 1);
        CubeRoot root = new CubeRoot(sum, setup, triples);
        while (!root.run()) {
            triples++;
            root = new CubeRoot(sum, setup, triples);
        }
        return root.ground.finish(1);
    }

    /// Works the root; false if it needs a longer triple than there is room for.
    private boolean run() {
        if (sum.further() < 0 || sum.radicand().isZero()) {
            return true;
        }
        ground.setFirst();
        int top = first - 1;
        for (int index = 2; index <= sum.further() + 1; index++) {
            if (ground.isClearFrom(first - index + 1)) {
                return true;
            }
            if (index - 1 > triples) {
                return false;
            }
            ground.reach(cubeUnits(index));
            lengthenTriple(index - 1);
            top = work(index, top);
        }
        return true;
    }

    /// The triple's first digit, but for a carry, stands on the second rod from the left.
    private int tripleRod(int index) {
        return ground.highest() - index;
    }

    private int cubeUnits(int index) {
        return layout.groupRod() - 3 * (index - 1);
    }

    private void lengthenTriple(int index) {
        int three = 3 * hand.digit(first - index + 1);
        hand.addProduct(tripleRod(index) + 1, three, new Cause.TripleSet(index));
    }

    /// Works one digit; returns the leftmost rod on which the remainder then stands.
    private int work(int index, int top) {
        int rod = first - index + 1;
        int[] triple = ground.digits(ground.highest(), tripleRod(index - 1));
        int stop = cubeUnits(index) + triple.length + 2;
        new Division(hand, triple, setup.habits().trialRule(), stop).divide(top, stop);
        int b = settle(index, rod, stop);
        if (b == 0 && index <= sum.further()) {
            return stop - 1;
        }
        addBack(index, stop, triple);
        hand.takeNumber(cubeUnits(index), b * b * b, new Cause.CubeTaken(index, b));
        return rod - 1;
    }

    /// Divides the quotient, whose units stand on `stop`, by the root, and takes the square of the
    /// digit found.
    private int settle(int index, int rod, int stop) {
        int[] root = ground.digits(first, rod + 1);
        Spot spot = new Spot(rod, stop + root.length);
        OfRoot reasons = new OfRoot(index, rod);
        QuotientDigit digit = new QuotientDigit(hand, spot, root, reasons);
        if (!digit.fits()) {
            return 0;
        }
        digit.tryBy(root[0]);
        digit.takeProducts();
        digit.leaveRoomFor(b -> b * b, stop);
        int b = digit.digit();
        hand.takeNumber(stop, b * b, new Cause.SquareTaken(index, b));
        while (!givesCube(index, rod, stop, digit.digit())) {
            giveBackSquare(digit, root.length, stop, reasons);
        }
        return digit.digit();
    }

    /// Whether the remainder gives the cube of `b`, once what is left of the quotient has been
    /// added back.
    private boolean givesCube(int index, int rod, int stop, int b) {
        int quotient = hand.standing(stop, rod - 1);
        int triple = hand.standing(tripleRod(index - 1), ground.highest());
        int below = hand.standing(cubeUnits(index), stop - 1);
        return 10 * quotient * triple + below >= b * b * b;
    }

    /// Makes the digit b one smaller after its square has been taken: the root once, and the
    /// difference of the squares, 2b - 1, go back to the quotient.
    private void giveBackSquare(QuotientDigit digit, int used, int stop, OfRoot reasons) {
        int difference = 2 * digit.digit() - 1;
        digit.lower(used);
        hand.addProduct(stop + 1, difference, reasons.revised(digit.digit()));
    }

    /// Multiplies what is left of the quotient by the triple, its last digit first as in a product,
    /// and adds it to the remainder.
    private void addBack(int index, int stop, int[] triple) {
        for (int rod = stop; rod <= first - index; rod++) {
            int digit = hand.digit(rod);
            if (digit == 0) {
                continue;
            }
            for (int j = 1; j <= triple.length; j++) {
                Cause cause = new Cause.AddedBack(index, digit, j, triple[j - 1]);
                hand.addProduct(rod - j, digit * triple[j - 1], cause);
            }
            hand.take(rod, digit, new Cause.QuotientCleared(index));
        }
    }
}
