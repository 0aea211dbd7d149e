package tamabako.frame.product;

import java.math.BigDecimal;
import java.util.Optional;
import tamabako.frame.Cause;
import tamabako.frame.Cause.Operand;
import tamabako.frame.Frame;
import tamabako.frame.Given;
import tamabako.frame.Hand;
import tamabako.frame.Outcome;
import tamabako.frame.Precision;
import tamabako.frame.Room;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;

/// Works a product on a frame: the multiplicand's last digit first, each digit times the
/// multiplier's digits from the left, two digits for every product.
///
/// The multiplier stands at the far left. With N = whole digits of both factors, the multiplicand's
/// first digit stands N rods left of the unit rod; the product's units then fall on the unit rod.
/// Source: Heffelfinger and Flom, Abacus: Mystery of the Bead, multiplication, after Kojima, The
/// Japanese Abacus (1954).
public final class ProductWork {

    /// The unit rod is the eighth from the left where that leaves room, as the handbook draws it.
    private static final int USUAL_UNIT_ROD = 8;

    private final Given multiplicand;
    private final Given multiplier;
    private final int firstRod;
    private final Hand hand;

    private ProductWork(Given multiplicand, Given multiplier, int firstRod, Hand hand) {
        this.multiplicand = multiplicand;
        this.multiplier = multiplier;
        this.firstRod = firstRod;
        this.hand = hand;
    }

    /// Works the exact product of two factors that are 0 or more.
    ///
    /// @throws Unworkable if a factor is below zero, or more rods are needed than the frame has
    public static Working work(BigDecimal multiplicand, BigDecimal multiplier, Setup setup) {
        return work(multiplicand, multiplier, Optional.empty(), setup);
    }

    /// Works the exact product and reads it rounded to `places`, 0 to 12.
    ///
    /// @throws Unworkable as for the exact product, or if `places` is out of range
    public static Working work(
            BigDecimal multiplicand,
            BigDecimal multiplier,
            int places,
            Rounding rounding,
            Setup setup) {
        Precision precision = new Precision(places, rounding);
        return work(multiplicand, multiplier, Optional.of(precision), setup);
    }

    private static Working work(
            BigDecimal first, BigDecimal second, Optional<Precision> precision, Setup setup) {
        Given multiplicand = new Given(Operand.MULTIPLICAND, first);
        Given multiplier = new Given(Operand.MULTIPLIER, second);
        int firstRod = multiplicand.wholeDigits() + multiplier.wholeDigits();
        Frame clear = room(multiplicand, multiplier, firstRod).clear(setup);
        Hand setter = new Hand(clear, setup.habits());
        multiplier.set(setter, clear.highest());
        multiplicand.set(setter, firstRod);
        Hand hand = new Hand(setter.frame(), setup.habits());
        new ProductWork(multiplicand, multiplier, firstRod, hand).run();
        Frame end = hand.frame();
        BigDecimal read = end.value(end.lowest(), end.highest() - multiplier.count());
        BigDecimal answer = precision.map(p -> p.round(read)).orElse(Precision.plain(read));
        return new Working(setter.trace(), hand.trace(), Outcome.of(answer));
    }

    /// The multiplier, a clear rod, and the rods from the multiplicand's first digit to the unit
    /// rod; at the right as many rods as the product has decimals, one at least if it may be.
    private static Room room(Given multiplicand, Given multiplier, int firstRod) {
        int left = multiplier.count() + 1 + Math.max(firstRod, 0) + 1;
        int decimals = Math.max(0, multiplicand.number().scale() + multiplier.number().scale());
        return new Room(
                multiplicand.figures() + " × " + multiplier.figures(),
                left,
                Math.max(0, USUAL_UNIT_ROD - left),
                decimals,
                decimals == 0 ? 1 : 0);
    }

    /// The digits right of a multiplicand digit on rod r times the multiplier are less than `10^r`,
    /// so no carry reaches a digit that is still to be worked.
    private void run() {
        int[] digits = multiplicand.digits();
        for (int i = digits.length - 1; i >= 0; i--) {
            if (digits[i] != 0) {
                multiply(i, digits[i]);
                hand.take(
                        firstRod - i,
                        digits[i],
                        new Cause.MultiplicandCleared(multiplicand.place(i)));
            }
        }
    }

    /// The first product goes on the two rods right of the multiplicand digit, each next one a rod
    /// further right; a zero of the multiplier still shifts one rod.
    private void multiply(int index, int digit) {
        int[] by = multiplier.digits();
        for (int j = 0; j < by.length; j++) {
            Cause cause =
                    new Cause.PartialProduct(
                            multiplicand.place(index), digit, multiplier.place(j), by[j]);
            hand.addProduct(firstRod - index - 1 - j, digit * by[j], cause);
        }
    }
}
