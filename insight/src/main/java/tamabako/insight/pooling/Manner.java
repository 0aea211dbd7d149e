package tamabako.insight.pooling;

import java.util.Locale;
import tamabako.insight.slip.Rates;
import tamabako.problems.Mode;
import tamabako.problems.Problem;

/// How a problem is worked, as far as slips differ: the rates of one manner say nothing about the
/// other.
public enum Manner {
    /// On the frame.
    FRAME,
    /// In the head, shown or called.
    MIND;

    /// The manner in which `problem` is worked.
    public static Manner of(Problem problem) {
        return problem.terms().mode() == Mode.FRAME ? FRAME : MIND;
    }

    /// The rates that ship for it.
    public Rates shipped() {
        return switch (this) {
            case FRAME -> Rates.shipped();
            case MIND -> Rates.shippedInMind();
        };
    }

    /// The word used in files: `frame` or `mind`.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
