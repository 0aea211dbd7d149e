package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import tamabako.insight.estimate.NormalNodes.Node;

/// How hard problems are, and how far persons differ, where abilities are normally distributed.
///
/// The mean ability is zero. With [Features] it is the linear logistic test model; give it a
/// feature that is one in every problem, since the mean difficulty is not free here. Answers of
/// persons who had all or nothing right count. The integral over abilities is a sum over 61 nodes.
///
/// Source: Bock and Lieberman, Psychometrika 35 (1970); Thissen, Psychometrika 47 (1982).
public final class MarginalRasch {

    private static final int NODES = 61;

    /// How hard problems are, and how far persons differ.
    ///
    /// @param spread the standard deviation of abilities, in logits
    public record Fit(Difficulties difficulties, Estimate spread) {}

    private MarginalRasch() {}

    /// What each problem's difficulty is, from the mean ability, or nothing where that cannot be
    /// told.
    public static Optional<Fit> each(AnswerSums sums) {
        return by(Features.own(sums.problems()), sums);
    }

    /// How much harder each feature makes a problem, or nothing where that cannot be told.
    public static Optional<Fit> by(Features features, AnswerSums sums) {
        if (features.problems() != sums.problems()) {
            throw new IllegalArgumentException(
                    "Features of %d problems, answers to %d."
                            .formatted(features.problems(), sums.problems()));
        }
        List<Node> nodes = NormalNodes.of(NODES);
        int effects = features.each();
        Likelihood likelihood = unknown -> logLikelihood(features, sums, nodes, unknown);
        RealVector start = new ArrayRealVector(effects + 1);
        start.setEntry(effects, 1);
        return Newton.climb(likelihood.curve(), start)
                .map(peak -> {
                    List<Estimate> all = peak.estimates();
                    Estimate spread = all.getLast();
                    Peak first =
                            new Peak(
                                    peak.point().getSubVector(0, effects),
                                    peak.covariance().getSubMatrix(0, effects - 1, 0, effects - 1),
                                    peak.height(),
                                    peak.steps());
                    return new Fit(
                            Difficulties.of(first, features),
                            new Estimate(Math.abs(spread.value()), spread.standardError()));
                });
    }

    private static DerivativeStructure logLikelihood(
            Features features,
            AnswerSums sums,
            List<Node> nodes,
            List<DerivativeStructure> unknown) {
        DerivativeStructure log = unknown.getFirst().getField().getZero();
        List<DerivativeStructure> difficulties = new ArrayList<>();
        for (int i = 0; i < sums.problems(); i++) {
            DerivativeStructure difficulty = features.sum(i, unknown);
            difficulties.add(difficulty);
            log = log.subtract(difficulty.multiply(sums.right().get(i)));
        }
        List<DerivativeStructure> nothingRight = new ArrayList<>();
        List<DerivativeStructure> abilities = new ArrayList<>();
        for (Node node : nodes) {
            DerivativeStructure ability = unknown.getLast().multiply(node.at());
            DerivativeStructure nothing = ability.getField().getZero().add(Math.log(node.share()));
            for (DerivativeStructure difficulty : difficulties) {
                nothing = nothing.subtract(Logits.softplus(ability.subtract(difficulty)));
            }
            abilities.add(ability);
            nothingRight.add(nothing);
        }
        for (int score = 0; score <= sums.problems(); score++) {
            int persons = sums.persons().get(score);
            if (persons > 0) {
                List<DerivativeStructure> each = new ArrayList<>();
                for (int i = 0; i < nodes.size(); i++) {
                    each.add(nothingRight.get(i).add(abilities.get(i).multiply(score)));
                }
                log = log.add(Logits.logSum(each).multiply(persons));
            }
        }
        return log;
    }
}
