package tamabako.insight.estimate;

import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/// How able a person is by Rasch's model, where the problems' difficulties are known.
///
/// Logits, on the scale of the difficulties: able as a problem is hard has it right every second
/// time.
public final class RaschAbility {

    private static final double EXACT = 1e-13;
    private static final int MOST_TRIES = 1000;
    private static final double FAR = 50;

    private RaschAbility() {}

    /// The ability of greatest likelihood, or nothing for all or nothing right, where there is
    /// none.
    public static Optional<Estimate> of(List<Double> difficulties, int score) {
        if (score < 0 || score > difficulties.size()) {
            throw new IllegalArgumentException(
                    "A score of %d with %d problems.".formatted(score, difficulties.size()));
        }
        if (score == 0 || score == difficulties.size()) {
            return Optional.empty();
        }
        UnivariateFunction missing =
                ability ->
                        difficulties.stream().mapToDouble(b -> Logits.chance(ability - b)).sum()
                                - score;
        double hardest = difficulties.stream().mapToDouble(b -> b).max().orElseThrow();
        double easiest = difficulties.stream().mapToDouble(b -> b).min().orElseThrow();
        double ability =
                new BracketingNthOrderBrentSolver(EXACT, EXACT, EXACT, 5)
                        .solve(MOST_TRIES, missing, easiest - FAR, hardest + FAR);
        return Optional.of(
                new Estimate(ability, 1 / Math.sqrt(information(difficulties, ability))));
    }

    /// How much the problems tell of somebody so able: the inverse of the error's variance.
    public static double information(List<Double> difficulties, double ability) {
        return difficulties.stream()
                .mapToDouble(b -> Logits.chance(ability - b) * Logits.chance(b - ability))
                .sum();
    }
}
