package tamabako.insight.estimate;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.special.Gamma;

/// How the chance that something comes out well follows from features.
///
/// The logit of the chance is the sum of features, each times its coefficient. Without priors the
/// coefficients are those of greatest likelihood, by iterated weighted least squares; with priors
/// those most likely afterwards, with errors by Laplace's method.
///
/// Source: McCullagh and Nelder, Generalized Linear Models (1989), chapter 4.
public final class LogisticRegression {

    private LogisticRegression() {}

    /// The coefficients of greatest likelihood, or nothing where there are none: features part what
    /// came out well from what did not, or say the same twice.
    public static Optional<LogisticFit> fit(Trials trials) {
        return fit(trials, Collections.nCopies(trials.each(), NormalPrior.FLAT));
    }

    /// The coefficients most likely after the trials.
    ///
    /// @param priors one for each feature
    public static Optional<LogisticFit> fit(Trials trials, List<NormalPrior> priors) {
        if (priors.size() != trials.each()) {
            throw new IllegalArgumentException(
                    "%d priors for %d features.".formatted(priors.size(), trials.each()));
        }
        LogisticCurve curve = new LogisticCurve(trials, priors);
        return Newton.climb(curve, new ArrayRealVector(trials.each()))
                .map(peak -> {
                    double[] coefficients = peak.point().toArray();
                    double log = 0;
                    double most = 0;
                    for (int group = 0; group < trials.groups(); group++) {
                        double well = trials.well(group);
                        double size = trials.trials(group);
                        double logit = curve.logit(group, coefficients);
                        double ways = logWays(size, well);
                        log += ways + well * logit - size * Logits.softplus(logit);
                        most += ways + share(well, size) + share(size - well, size);
                    }
                    return new LogisticFit(peak.estimates(), log, 2 * (most - log), peak.steps());
                });
    }

    private static double share(double part, double whole) {
        return part == 0 ? 0 : part * Math.log(part / whole);
    }

    private static double logWays(double size, double well) {
        return size == 1
                ? 0
                : Gamma.logGamma(size + 1)
                        - Gamma.logGamma(well + 1)
                        - Gamma.logGamma(size - well + 1);
    }
}
