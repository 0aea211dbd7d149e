package tamabako.frame.quotient;

import java.math.BigDecimal;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Working;

/// Works a quotient on a frame.
@SuppressWarnings("DoNotCallSuggester")
public final class QuotientWork {

    private QuotientWork() {}

    /// Works the quotient to `places`.
    public static Working work(
            BigDecimal dividend, BigDecimal divisor, int places, Rounding rounding, Setup setup) {
        throw new UnsupportedOperationException();
    }
}
