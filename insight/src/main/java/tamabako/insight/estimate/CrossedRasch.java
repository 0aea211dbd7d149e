package tamabako.insight.estimate;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/// How hard features make problems, where each problem may be harder or easier than its features
/// say, and abilities are normally distributed.
///
/// The linear logistic test model with a random error of each problem. Features never tell all, so
/// this is the form whose errors can be believed; give it a feature that is one in every problem.
/// The integral over persons and problems is Laplace's approximation, whose spread of abilities is
/// known to be a little small.
///
/// Source: De Boeck and Wilson, Explanatory Item Response Models (2004), chapter 6; Janssen,
/// Schepers and Peres (2004) in it.
public final class CrossedRasch {

    /// How hard features make problems, and how far that is from all.
    ///
    /// @param effects how much harder each feature makes a problem, in logits
    /// @param ability standard deviation of abilities, in logits
    /// @param error standard deviation of what features do not tell, in logits
    /// @param beside how much harder each problem is than its features say, in logits
    /// @param logLikelihood natural logarithm, by Laplace's approximation
    public record Fit(
            List<Estimate> effects,
            double ability,
            double error,
            List<Double> beside,
            double logLikelihood) {

        public Fit {
            effects = List.copyOf(effects);
            beside = List.copyOf(beside);
        }
    }

    private CrossedRasch() {}

    /// The most likely effects, or nothing where they cannot be told.
    public static Optional<Fit> by(Features features, AnswerSums sums) {
        CrossedAnswers answers = new CrossedAnswers(features, sums);
        int effects = features.each();
        RealVector start = start(features, sums).append(0.5);
        return Newton.climb(new Differences(answers::logLikelihood), start)
                .map(peak -> fit(peak, effects, answers, peak.point()));
    }

    /// The same where features are taken to tell all.
    static Optional<Fit> withoutError(Features features, AnswerSums sums) {
        CrossedAnswers answers = new CrossedAnswers(features, sums);
        int effects = features.each();
        Differences curve = new Differences(point -> answers.logLikelihood(point.append(0)));
        return Newton.climb(curve, start(features, sums))
                .map(peak -> fit(peak, effects, answers, peak.point().append(0)));
    }

    /// Effects and the spread of abilities as [MarginalRasch] has them, which is not far.
    private static RealVector start(Features features, AnswerSums sums) {
        return MarginalRasch.by(features, sums)
                .map(fit -> {
                    RealVector point = new ArrayRealVector(features.each());
                    for (int i = 0; i < features.each(); i++) {
                        point.setEntry(i, fit.difficulties().effects().get(i).value());
                    }
                    return point.append(fit.spread().value());
                })
                .orElseGet(() -> new ArrayRealVector(features.each()).append(1));
    }

    private static Fit fit(Peak peak, int effects, CrossedAnswers answers, RealVector point) {
        double error = point.getEntry(effects + 1);
        RealVector beside = answers.errors(point).mapMultiply(error);
        return new Fit(
                peak.estimates().subList(0, effects),
                Math.abs(point.getEntry(effects)),
                Math.abs(error),
                IntStream.range(0, beside.getDimension()).mapToObj(beside::getEntry).toList(),
                peak.height());
    }
}
