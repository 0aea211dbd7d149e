package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.hipparchus.linear.ArrayRealVector;

/// How hard problems are, whoever sat them: Rasch's model given each person's score.
///
/// Nothing is said or assumed of how able the persons are. With [Features] it is Fischer's linear
/// logistic test model: a problem is as hard as its features together make it. Logits; harder is
/// higher. Answers of persons who had all or nothing right do not count.
///
/// Source: Rasch, Probabilistic Models for Some Intelligence and Attainment Tests (1960); Andersen,
/// Journal of the Royal Statistical Society B 34 (1972); Fischer, Acta Psychologica 37 (1973).
public final class ConditionalRasch {

    private ConditionalRasch() {}

    /// What each problem's difficulty is, the mean of all being zero, or nothing where that cannot
    /// be told: everybody or nobody had some problem right.
    public static Optional<Difficulties> each(AnswerSums sums) {
        return by(Features.ownAboutZero(sums.problems()), sums);
    }

    /// How much harder each feature makes a problem, or nothing where that cannot be told: features
    /// that always come together, or that come to the same in all problems.
    public static Optional<Difficulties> by(Features features, AnswerSums sums) {
        if (features.problems() != sums.problems()) {
            throw new IllegalArgumentException(
                    "Features of %d problems, answers to %d."
                            .formatted(features.problems(), sums.problems()));
        }
        Likelihood likelihood = effects -> logLikelihood(features, sums, effects);
        return Newton.climb(likelihood.curve(), new ArrayRealVector(features.each()))
                .map(peak -> Difficulties.of(peak, features));
    }

    private static DerivativeStructure logLikelihood(
            Features features, AnswerSums sums, List<DerivativeStructure> effects) {
        DerivativeStructure log = effects.getFirst().getField().getZero();
        List<DerivativeStructure> odds = new ArrayList<>();
        for (int i = 0; i < sums.problems(); i++) {
            DerivativeStructure easier = features.sum(i, effects).negate();
            odds.add(easier.exp());
            log = log.add(easier.multiply(sums.right().get(i)));
        }
        List<DerivativeStructure> scores = SymmetricFunctions.of(odds);
        for (int score = 0; score <= sums.problems(); score++) {
            int persons = sums.persons().get(score);
            if (persons > 0) {
                log = log.subtract(scores.get(score).log().multiply(persons));
            }
        }
        return log;
    }
}
