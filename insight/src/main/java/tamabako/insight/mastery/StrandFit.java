package tamabako.insight.mastery;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;

/// Finds how many times as often as usual one pupil slips, by strand: the likeliest logarithms
/// under the population, and their covariances there (Laplace's way, with its next term: means and
/// skewness from the third derivatives).
///
/// The slips behind the wrong answers are shared out by the pupil's own factors, and the factors
/// follow from the slips, in turns (EM), a step of Newton's each.
final class StrandFit {

    private static final int MOVES = Move.values().length;
    private static final int ROUNDS = 60;
    private static final double NO_MORE = 1e-4;
    private static final double LONGEST_STEP = 1;

    /// The next term after Laplace's is a small one, or it is none.
    private static final double MOST_SHIFT = 0.5;

    /// What the model itself may be off in a move: how the kinds of slip share it is assumed.
    private static final double MODEL = 0.2;

    /// An inverse is symmetric but for rounding.
    private static final double SYMMETRY = 1e-6;

    private static final double POSITIVE = 1e-10;

    private final List<MasteryTally.Counted> days;
    private final MasteryPopulation population;
    private final int[] strands;
    private final double[] expected = new double[Strand.COUNT];
    private final double[] logs = new double[Strand.COUNT];
    private final double[] factors = new double[Strand.COUNT];
    private final RealMatrix precision;

    StrandFit(List<MasteryTally.Counted> days, MasteryPopulation population) {
        this.days = days;
        this.population = population;
        for (MasteryTally.Counted counted : days) {
            for (int strand = 0; strand < Strand.COUNT; strand++) {
                expected[strand] += counted.weight() * counted.day().expected()[strand];
            }
        }
        this.strands = strandsMet();
        for (int strand = 0; strand < Strand.COUNT; strand++) {
            logs[strand] = population.mean(strand);
            factors[strand] = Math.exp(logs[strand]);
        }
        this.precision = inverse(prior());
    }

    /// All moves, and the kinds of slip for which there was an occasion.
    private int[] strandsMet() {
        return IntStream.range(0, Strand.COUNT)
                .filter(strand -> strand < MOVES || expected[strand] > 0)
                .toArray();
    }

    private RealMatrix prior() {
        RealMatrix prior = new Array2DRowRealMatrix(strands.length, strands.length);
        for (int i = 0; i < strands.length; i++) {
            for (int j = 0; j < strands.length; j++) {
                prior.setEntry(i, j, population.covariance(strands[i], strands[j]));
            }
        }
        return prior;
    }

    /// Finds them.
    SlipPosterior fit() {
        for (int round = 0; round < ROUNDS; round++) {
            if (step(slips()) < NO_MORE) {
                break;
            }
        }
        double[] slips = slips();
        double[][] covariance = wholeCovariance();
        double[] third = thirdDerivatives();
        double[] means = logs.clone();
        double[] skews = new double[Strand.COUNT];
        for (int strand : strands) {
            double shift = 0;
            for (int other : strands) {
                double both = covariance[strand][other];
                shift += third[other] * both * covariance[other][other] / 2;
                skews[strand] += third[other] * both * both * both;
            }
            double deviation = Math.sqrt(covariance[strand][strand]);
            means[strand] += Math.clamp(shift, -MOST_SHIFT * deviation, MOST_SHIFT * deviation);
            skews[strand] = Math.clamp(skews[strand] / Math.pow(deviation, 3), -1, 1);
        }
        for (int move = 0; move < MOVES; move++) {
            covariance[move][move] += MODEL * MODEL;
        }
        return new SlipPosterior(means, covariance, skews, slips, expected);
    }

    private double[][] wholeCovariance() {
        RealMatrix covariance = covariance();
        double[][] all = new double[Strand.COUNT][Strand.COUNT];
        for (int strand = 0; strand < Strand.COUNT; strand++) {
            all[strand][strand] = population.covariance(strand, strand);
        }
        for (int i = 0; i < strands.length; i++) {
            for (int j = 0; j < strands.length; j++) {
                all[strands[i]][strands[j]] = covariance.getEntry(i, j);
            }
        }
        return all;
    }

    /// The third derivatives of the logarithm of the chance, each strand by itself: they tell how
    /// far the spread leans to the small side.
    private double[] thirdDerivatives() {
        double[] third = new double[Strand.COUNT];
        for (int strand : strands) {
            third[strand] = -expected[strand] * factors[strand];
        }
        double[] slips = new double[Strand.COUNT];
        for (MasteryTally.Counted counted : days) {
            for (StrandEvidence answer : counted.day().wrong()) {
                Arrays.fill(slips, 0);
                answer.addSlips(factors, 1, slips);
                for (int strand : strands) {
                    double made = Math.min(1, slips[strand]);
                    third[strand] += counted.weight() * made * (1 - made) * (1 - 2 * made);
                }
            }
        }
        return third;
    }

    private double[] slips() {
        double[] slips = new double[Strand.COUNT];
        for (MasteryTally.Counted counted : days) {
            for (StrandEvidence answer : counted.day().wrong()) {
                answer.addSlips(factors, counted.weight(), slips);
            }
        }
        return slips;
    }

    /// One step of Newton's with the slips as they are shared out now; gives its length.
    private double step(double[] slips) {
        double[] gradient = new double[strands.length];
        RealMatrix curvature = precision.copy();
        for (int i = 0; i < strands.length; i++) {
            int strand = strands[i];
            double made = expected[strand] * factors[strand];
            gradient[i] = slips[strand] - made;
            curvature.addToEntry(i, i, made);
            for (int j = 0; j < strands.length; j++) {
                double off = logs[strands[j]] - population.mean(strands[j]);
                gradient[i] -= precision.getEntry(i, j) * off;
            }
        }
        double[] step =
                solved(curvature).getSolver().solve(new ArrayRealVector(gradient, false)).toArray();
        double longest = 0;
        for (int i = 0; i < strands.length; i++) {
            double bounded = Math.clamp(step[i], -LONGEST_STEP, LONGEST_STEP);
            logs[strands[i]] += bounded;
            factors[strands[i]] = Math.exp(logs[strands[i]]);
            longest = Math.max(longest, Math.abs(bounded));
        }
        return longest;
    }

    /// The inverse of the observed information: what was expected, less the doubt which slips were
    /// made, and what the population adds.
    private RealMatrix covariance() {
        double[][] information = new double[Strand.COUNT][Strand.COUNT];
        for (MasteryTally.Counted counted : days) {
            for (StrandEvidence answer : counted.day().wrong()) {
                answer.takeDoubt(factors, counted.weight(), information);
            }
        }
        RealMatrix whole = precision.copy();
        for (int i = 0; i < strands.length; i++) {
            whole.addToEntry(i, i, expected[strands[i]] * factors[strands[i]]);
        }
        RealMatrix observed = whole.copy();
        for (int i = 0; i < strands.length; i++) {
            for (int j = 0; j < strands.length; j++) {
                observed.addToEntry(i, j, information[strands[i]][strands[j]]);
            }
        }
        try {
            return inverse(observed);
        } catch (MathIllegalArgumentException _) {
            // At the likeliest place the doubt is never larger; short of it, it may be.
            return inverse(whole);
        }
    }

    private static RealMatrix inverse(RealMatrix matrix) {
        return solved(matrix).getSolver().getInverse();
    }

    private static CholeskyDecomposition solved(RealMatrix matrix) {
        return new CholeskyDecomposition(matrix, SYMMETRY, POSITIVE);
    }
}
