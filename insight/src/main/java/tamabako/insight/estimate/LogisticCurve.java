package tamabako.insight.estimate;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// The logistic likelihood of trials with a normal prior on each coefficient, constants left out.
///
/// Squares are summed four rows at a time, which is what takes the time: each sum is then fetched
/// and put back once for four rows.
final class LogisticCurve implements Curve {

    private static final int AT_ONCE = 4;

    private final Trials trials;
    private final List<NormalPrior> priors;

    LogisticCurve(Trials trials, List<NormalPrior> priors) {
        this.trials = trials;
        this.priors = List.copyOf(priors);
    }

    @Override
    public Slope at(RealVector point) {
        int each = trials.each();
        double[] coefficients = point.toArray();
        double[] gradient = new double[each];
        double[][] squares = new double[each][each];
        double[] weights = new double[trials.groups()];
        double height = 0;
        for (int group = 0; group < trials.groups(); group++) {
            double logit = logit(group, coefficients);
            double size = trials.trials(group);
            double well = trials.well(group);
            double odds = Math.exp(-Math.abs(logit));
            double chance = (logit < 0 ? odds : 1) / (1 + odds);
            height += well * logit - size * (Math.max(logit, 0) + Math.log1p(odds));
            weights[group] = size * chance * (1 - chance);
            addRow(gradient, well - size * chance, group);
        }
        addSquares(squares, weights);
        for (int i = 0; i < each; i++) {
            NormalPrior prior = priors.get(i);
            double away = coefficients[i] - prior.mean();
            height -= away * away * prior.precision() / 2;
            gradient[i] -= away * prior.precision();
            squares[i][i] += prior.precision();
        }
        return new Slope(height, new ArrayRealVector(gradient, false), bend(squares));
    }

    double logit(int group, double[] coefficients) {
        double[] features = trials.features();
        int row = group * coefficients.length;
        double logit = 0;
        for (int i = 0; i < coefficients.length; i++) {
            logit += features[row + i] * coefficients[i];
        }
        return logit;
    }

    private void addRow(double[] to, double times, int group) {
        double[] features = trials.features();
        int row = group * to.length;
        for (int i = 0; i < to.length; i++) {
            to[i] += times * features[row + i];
        }
    }

    /// Adds the lower half of features by features, each row by its weight.
    private void addSquares(double[][] squares, double[] weights) {
        int group = 0;
        for (; group + AT_ONCE <= weights.length; group += AT_ONCE) {
            addFour(squares, weights, group);
        }
        for (; group < weights.length; group++) {
            double[] features = trials.features();
            int row = group * squares.length;
            for (int i = 0; i < squares.length; i++) {
                double times = weights[group] * features[row + i];
                for (int j = 0; j <= i; j++) {
                    squares[i][j] += times * features[row + j];
                }
            }
        }
    }

    private void addFour(double[][] squares, double[] weights, int group) {
        double[] features = trials.features();
        int a = group * squares.length;
        int b = a + squares.length;
        int c = b + squares.length;
        int d = c + squares.length;
        for (int i = 0; i < squares.length; i++) {
            double timesA = weights[group] * features[a + i];
            double timesB = weights[group + 1] * features[b + i];
            double timesC = weights[group + 2] * features[c + i];
            double timesD = weights[group + 3] * features[d + i];
            double[] sums = squares[i];
            for (int j = 0; j <= i; j++) {
                sums[j] +=
                        timesA * features[a + j]
                                + timesB * features[b + j]
                                + timesC * features[c + j]
                                + timesD * features[d + j];
            }
        }
    }

    private static RealMatrix bend(double[][] squares) {
        for (int i = 0; i < squares.length; i++) {
            for (int j = 0; j <= i; j++) {
                squares[i][j] = -squares[i][j];
                squares[j][i] = squares[i][j];
            }
        }
        return new Array2DRowRealMatrix(squares, false);
    }
}
