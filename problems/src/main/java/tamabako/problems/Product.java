package tamabako.problems;

import java.math.BigDecimal;
import tamabako.frame.Setup;
import tamabako.frame.Working;
import tamabako.frame.product.ProductWork;

/// A multiplication (kakezan): multiplicand (jitsu) times multiplier (hō). Exact, unless the terms
/// ask for places or name a unit.
public record Product(String id, BigDecimal multiplicand, BigDecimal multiplier, Terms terms)
        implements Problem {

    @Override
    public Answer answer() {
        BigDecimal exact = multiplicand.multiply(multiplier);
        return Answer.of(isRounded() ? exact.setScale(places(), rounding().mode()) : exact);
    }

    @Override
    public Working work(Setup setup) {
        return isRounded()
                ? ProductWork.work(multiplicand, multiplier, places(), rounding(), setup)
                : ProductWork.work(multiplicand, multiplier, setup);
    }

    @Override
    public Product withId(String changed) {
        return new Product(changed, multiplicand, multiplier, terms);
    }

    private boolean isRounded() {
        return terms.places().isPresent() || terms.unit().isPresent();
    }

    /// Amounts are rounded to the whole unit unless the terms say otherwise.
    private int places() {
        return terms.places().orElse(0);
    }
}
