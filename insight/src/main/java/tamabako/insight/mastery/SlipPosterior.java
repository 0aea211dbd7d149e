package tamabako.insight.mastery;

import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;

/// What is known of how often one pupil slips: how many times as often as usual in each strand, as
/// logarithms that are spread normally.
public final class SlipPosterior {

    private final double[] logs;
    private final double[][] covariance;
    private final double[] skews;
    private final double[] slips;
    private final double[] expected;

    SlipPosterior(
            double[] logs,
            double[][] covariance,
            double[] skews,
            double[] slips,
            double[] expected) {
        this.logs = logs;
        this.skews = skews;
        this.covariance = covariance;
        this.slips = slips;
        this.expected = expected;
    }

    /// How many times as often as usual the pupil slips in `strand`: the middle estimate.
    public double factor(Strand strand) {
        return factor(strand, 0);
    }

    /// The factor that lies `deviations` standard deviations above the middle, or below for less
    /// than 0, as a normal spread has them; the lean of the spread is counted in (Cornish and
    /// Fisher's first term).
    double factor(Strand strand, double deviations) {
        double leaning = skews[strand.index()] / 6 * (deviations * deviations - 1);
        return Math.exp(log(strand) + deviation(strand) * (deviations + leaning));
    }

    /// The mean of the natural logarithm of the factor.
    public double log(Strand strand) {
        return logs[strand.index()];
    }

    /// The covariance of the logarithms of two strands.
    public double covariance(Strand one, Strand other) {
        return covariance[one.index()][other.index()];
    }

    /// The standard deviation of the logarithm.
    public double deviation(Strand strand) {
        return Math.sqrt(covariance(strand, strand));
    }

    /// How many slips were made in `strand` as far as the answers show; old ones count less.
    public double slips(Strand strand) {
        return slips[strand.index()];
    }

    /// How many slips in `strand` were to be expected of a usual pupil; old ones count less.
    public double expected(Strand strand) {
        return expected[strand.index()];
    }

    /// How many slips this pupil is expected to make in a problem, as a logarithm that is spread
    /// normally: with `mean` and `deviation`. The problem is right with chance `exp(-slips)`.
    public record LogSlips(double mean, double deviation) {

        /// The chance of a right answer, with all doubt about the pupil.
        public double chanceRight() {
            double sum = 0;
            for (int i = 0; i < NODES.length; i++) {
                sum += WEIGHTS[i] * Math.exp(-Math.exp(mean + deviation * NODES[i]));
            }
            return sum;
        }

        // Gauss and Hermite's rule with seven points, for a standard normal spread.
        private static final double[] NODES = {
            -3.75043971772574,
            -2.36675941073454,
            -1.15440539473997,
            0,
            1.15440539473997,
            2.36675941073454,
            3.75043971772574
        };
        private static final double[] WEIGHTS = {
            5.48268855972218E-4, 0.0307571239675865, 0.240123178605013,
            0.457142857142857, 0.240123178605013, 0.0307571239675865,
            5.48268855972218E-4
        };
    }

    /// What is expected in the problem of `table`.
    ///
    /// @param usual the rates by which the answers were weighed
    public LogSlips expect(EventTable table, Rates usual) {
        return expect(StrandEvidence.expected(table, usual));
    }

    /// The same from what is expected of a usual pupil, by [Strand#index()].
    public LogSlips expect(double[] ofUsual) {
        double mean = 0;
        double variance = 0;
        double[] made = new double[Strand.COUNT];
        for (int one = 0; one < Strand.COUNT; one++) {
            made[one] = ofUsual[one] * Math.exp(logs[one] + covariance[one][one] / 2);
            mean += made[one];
        }
        for (int one = 0; one < Strand.COUNT; one++) {
            for (int other = 0; other < Strand.COUNT && made[one] > 0; other++) {
                variance += made[one] * made[other] * Math.expm1(covariance[one][other]);
            }
        }
        // Sums of such spreads are nearly such a spread with their mean and variance (Fenton 1960).
        double log = Math.log1p(variance / (mean * mean));
        return new LogSlips(Math.log(mean) - log / 2, Math.sqrt(log));
    }

    /// One possible pupil, drawn by what is known: factors by [Strand#index()]. To draw many, keep
    /// [#draws()].
    public Draws draws() {
        return new Draws(logs, covariance);
    }

    /// Draws possible pupils.
    public static final class Draws {

        /// An inverse is symmetric but for rounding.
        private static final double SYMMETRY = 1e-6;

        private static final double POSITIVE = 1e-12;

        private final double[] logs;
        private final RealMatrix root;

        private Draws(double[] logs, double[][] covariance) {
            this.logs = logs;
            this.root =
                    new CholeskyDecomposition(
                                    new Array2DRowRealMatrix(covariance), SYMMETRY, POSITIVE)
                            .getL();
        }

        /// How many times as often as usual a possible pupil slips, by [Strand#index()].
        public double[] next(SplittableRandom chance) {
            double[] normal = new double[logs.length];
            for (int i = 0; i < normal.length; i++) {
                normal[i] = chance.nextGaussian();
            }
            double[] drawn = root.operate(normal);
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] = Math.exp(logs[i] + drawn[i]);
            }
            return drawn;
        }
    }
}
