package tamabako.insight.estimate;

import java.util.List;

/// How a chance follows from features.
///
/// @param coefficients one for each feature, in logits for each unit of it
/// @param logLikelihood natural logarithm of how likely the trials were, without the prior
/// @param deviance twice the logarithm that is missing to a chance of its own for each group
/// @param steps steps of the climb
public record LogisticFit(
        List<Estimate> coefficients, double logLikelihood, double deviance, int steps) {

    public LogisticFit {
        coefficients = List.copyOf(coefficients);
    }

    /// The chance that a trial with such features comes out well.
    public double chance(double... features) {
        if (features.length != coefficients.size()) {
            throw new IllegalArgumentException(
                    "%d features, not %d.".formatted(features.length, coefficients.size()));
        }
        double logit = 0;
        for (int i = 0; i < features.length; i++) {
            logit += features[i] * coefficients.get(i).value();
        }
        return Logits.chance(logit);
    }
}
