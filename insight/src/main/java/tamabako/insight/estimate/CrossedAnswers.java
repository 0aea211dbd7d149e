package tamabako.insight.estimate;

import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// Answers to problems of which each has an error of its own, persons of one score taken together.
///
/// A point holds the effects of the features, the standard deviation of abilities and that of
/// errors. Hidden are the abilities of each score, then the errors of each problem, both in units
/// of their deviation.
final class CrossedAnswers {

    private final Features features;
    private final AnswerSums sums;
    private final int[] scores;

    CrossedAnswers(Features features, AnswerSums sums) {
        if (features.problems() != sums.problems()) {
            throw new IllegalArgumentException(
                    "Features of %d problems, answers to %d."
                            .formatted(features.problems(), sums.problems()));
        }
        this.features = features;
        this.sums = sums;
        this.scores =
                IntStream.rangeClosed(0, sums.problems())
                        .filter(score -> sums.persons().get(score) > 0)
                        .toArray();
    }

    /// Laplace's approximation; NaN where it has none.
    double logLikelihood(RealVector point) {
        return top(point)
                .map(peak -> {
                    RealMatrix curvature = hidden(point).at(peak.point()).bend().scalarMultiply(-1);
                    return peak.height() - logDeterminant(curvature) / 2;
                })
                .orElse(Double.NaN);
    }

    /// The most likely errors of the problems, in units of their deviation.
    RealVector errors(RealVector point) {
        return top(point).orElseThrow().point().getSubVector(scores.length, sums.problems());
    }

    private Optional<Peak> top(RealVector point) {
        return Newton.climb(hidden(point), new ArrayRealVector(scores.length + sums.problems()));
    }

    /// Of the curvature in every person's ability, from that in the abilities of each score: n
    /// persons alike come in there as one entry that is n times as great.
    private double logDeterminant(RealMatrix curvature) {
        double log = Positive.logDeterminant(curvature);
        for (int i = 0; i < scores.length; i++) {
            int persons = sums.persons().get(scores[i]);
            double each = curvature.getEntry(i, i) / persons;
            log += (persons - 1) * Math.log(each) - Math.log(persons);
        }
        return log;
    }

    /// How likely the answers are together with what is hidden.
    private Curve hidden(RealVector point) {
        int each = features.each();
        RealVector easiness = features.rows().operate(point.getSubVector(0, each)).mapMultiply(-1);
        double ability = point.getEntry(each);
        double error = point.getEntry(each + 1);
        return place -> slope(place, easiness, ability, error);
    }

    private Curve.Slope slope(RealVector place, RealVector easiness, double ability, double error) {
        int size = place.getDimension();
        int problems = sums.problems();
        double height = 0;
        RealVector gradient = new ArrayRealVector(size);
        RealMatrix bend = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < problems; i++) {
            int at = scores.length + i;
            double right = sums.right().get(i);
            double own = place.getEntry(at);
            height += right * (easiness.getEntry(i) - error * own) - own * own / 2;
            gradient.addToEntry(at, -error * right - own);
            bend.addToEntry(at, at, -1);
        }
        for (int s = 0; s < scores.length; s++) {
            int persons = sums.persons().get(scores[s]);
            double able = place.getEntry(s);
            height += persons * (ability * able * scores[s] - able * able / 2);
            gradient.addToEntry(s, persons * (ability * scores[s] - able));
            bend.addToEntry(s, s, -persons);
            for (int i = 0; i < problems; i++) {
                int at = scores.length + i;
                double logit = ability * able + easiness.getEntry(i) - error * place.getEntry(at);
                double chance = Logits.chance(logit);
                double weight = persons * chance * (1 - chance);
                height -= persons * Logits.softplus(logit);
                gradient.addToEntry(s, -persons * chance * ability);
                gradient.addToEntry(at, persons * chance * error);
                bend.addToEntry(s, s, -weight * ability * ability);
                bend.addToEntry(at, at, -weight * error * error);
                bend.addToEntry(s, at, weight * ability * error);
                bend.addToEntry(at, s, weight * ability * error);
            }
        }
        return new Curve.Slope(height, gradient, bend);
    }
}
