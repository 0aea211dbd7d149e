package tamabako.frame.product;

import java.math.BigDecimal;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Working;

/// Works a product on a frame.
@SuppressWarnings("DoNotCallSuggester")
public final class ProductWork {

    private ProductWork() {}

    /// Works the exact product.
    public static Working work(BigDecimal multiplicand, BigDecimal multiplier, Setup setup) {
        throw new UnsupportedOperationException();
    }

    /// Works the product and reads it rounded to `places`.
    public static Working work(
            BigDecimal multiplicand,
            BigDecimal multiplier,
            int places,
            Rounding rounding,
            Setup setup) {
        throw new UnsupportedOperationException();
    }
}
