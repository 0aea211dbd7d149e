package tamabako.frame.root;

import java.math.BigDecimal;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Working;

/// Works a root on a frame.
@SuppressWarnings("DoNotCallSuggester")
public final class RootWork {

    private RootWork() {}

    /// Works the root to `places`.
    public static Working work(
            int degree, BigDecimal of, int places, Rounding rounding, Setup setup) {
        throw new UnsupportedOperationException();
    }
}
