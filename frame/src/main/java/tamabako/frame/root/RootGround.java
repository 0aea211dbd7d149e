package tamabako.frame.root;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import tamabako.frame.Cause;
import tamabako.frame.Frame;
import tamabako.frame.Hand;
import tamabako.frame.Rod;
import tamabako.frame.Setup;
import tamabako.frame.Trace;
import tamabako.frame.Working;

/// The frame with the radicand set, and the hand that works its root there.
final class RootGround {

    private final RootLayout layout;
    private final RootSum sum;
    private final Setup setup;
    private final Frame clear;
    private final Hand setter;
    private final Hand hand;
    private int reached;

    RootGround(RootLayout layout, Setup setup) {
        this.layout = layout;
        this.sum = layout.sum();
        this.setup = setup;
        this.clear = layout.clear(setup);
        this.setter = new Hand(clear, setup.habits());
        sum.radicand().set(setter, layout.radicandUnit() + sum.radicand().place(0));
        this.hand = new Hand(setter.frame(), setup.habits());
        this.reached = layout.lastSet();
    }

    Hand hand() {
        return hand;
    }

    /// The leftmost rod.
    int highest() {
        return clear.highest();
    }

    /// The rightmost rod there can be.
    int lowest() {
        return clear.lowest();
    }

    /// Makes sure that the frame has `rod`, before beads may be moved there.
    void reach(int rod) {
        reached = Math.min(reached, rod);
        if (rod < clear.lowest()) {
            throw layout.tooShort(setup);
        }
    }

    /// Whether `rod` and all rods right of it are clear.
    boolean isClearFrom(int rod) {
        return hand.standing(clear.lowest(), rod) == 0;
    }

    /// The digits that stand on the rods from `from` down to `to`, without zeros at the left.
    int[] digits(int from, int to) {
        return IntStream.rangeClosed(to, from)
                .map(rod -> hand.digit(from + to - rod))
                .dropWhile(digit -> digit == 0)
                .toArray();
    }

    /// Sets the first digit of the root and takes its power from the first group.
    void setFirst() {
        int units = layout.groupRod();
        reach(units);
        int digit = sum.largest(hand.standing(units, units + sum.degree() - 1));
        hand.add(sum.firstRod(), digit, new Cause.RootDigit(1, digit));
        Cause taken =
                sum.degree() == 2 ? new Cause.SquareTaken(1, digit) : new Cause.CubeTaken(1, digit);
        hand.takeNumber(units, sum.power(digit), taken);
    }

    /// Reads the root and what is left. `times` is what the remainder on the frame counts: 2 if it
    /// has been halved, else 1.
    Working finish(int times) {
        Frame end = hand.frame();
        int last = sum.precision().lastRod();
        BigDecimal root = end.value(last, sum.firstRod());
        BigDecimal left =
                end.value(end.lowest(), Math.min(last, sum.firstRod() + 1) - 1)
                        .scaleByPowerOfTen(-layout.radicandUnit())
                        .multiply(BigDecimal.valueOf(times));
        // The rods at the right that no step came near are left away, unless they were asked for.
        int lowest = setup.rods().isPresent() ? clear.lowest() : reached;
        return new Working(
                trace(clear, setter, lowest),
                trace(setter.frame(), hand, lowest),
                sum.precision().outcome(root, left));
    }

    private static Trace trace(Frame from, Hand by, int lowest) {
        return new Trace(shorten(from, lowest), by.steps(), shorten(by.frame(), lowest));
    }

    private static Frame shorten(Frame frame, int lowest) {
        List<Rod> rods = frame.rods();
        return new Frame(frame.kind(), lowest, rods.subList(lowest - frame.lowest(), rods.size()));
    }
}
