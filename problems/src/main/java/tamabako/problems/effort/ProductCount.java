package tamabako.problems.effort;

import tamabako.frame.Cause.Operand;
import tamabako.frame.Frame;
import tamabako.frame.Given;
import tamabako.problems.Product;

/// Counts products, worked as [tamabako.frame.product.ProductWork] does.
final class ProductCount {

    private ProductCount() {}

    static HandCount of(Product product) {
        if (product.multiplicand().signum() <= 0 || product.multiplier().signum() <= 0) {
            return TraceCount.of(product);
        }
        Given multiplicand = new Given(Operand.MULTIPLICAND, product.multiplicand());
        Given multiplier = new Given(Operand.MULTIPLIER, product.multiplier());
        return fits(multiplicand, multiplier)
                ? count(multiplicand.digits(), multiplier.digits())
                : TraceCount.of(product);
    }

    /// Whether it surely fits the longest frame.
    private static boolean fits(Given multiplicand, Given multiplier) {
        int whole = Math.max(0, multiplicand.wholeDigits() + multiplier.wholeDigits());
        int decimals = Math.max(0, multiplicand.number().scale() + multiplier.number().scale());
        return multiplier.count() + whole + decimals + 2 <= Frame.MOST_RODS;
    }

    /// Which rod is the unit rod changes no count, nor where the multiplier stands.
    private static HandCount count(int[] multiplicand, int[] multiplier) {
        HandCount count = new HandCount();
        new CountingHand(count).set(0, multiplier);
        CountingHand hand = new CountingHand(count);
        hand.set(0, multiplicand);
        for (int i = multiplicand.length - 1; i >= 0; i--) {
            for (int j = 0; j < multiplier.length; j++) {
                hand.addProduct(-i - 1 - j, multiplicand[i] * multiplier[j]);
            }
            hand.take(-i, multiplicand[i]);
        }
        return count;
    }
}
