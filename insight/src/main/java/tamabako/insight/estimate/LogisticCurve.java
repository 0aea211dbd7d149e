package tamabako.insight.estimate;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// The logistic likelihood of trials with a normal prior on each coefficient, constants left out.
final class LogisticCurve implements Curve {

    private final Trials trials;
    private final List<NormalPrior> priors;

    LogisticCurve(Trials trials, List<NormalPrior> priors) {
        this.trials = trials;
        this.priors = List.copyOf(priors);
    }

    @Override
    public Slope at(RealVector point) {
        double[] coefficients = Arrays.copyOf(point.toArray(), trials.width());
        LogisticSums sums = new LogisticSums(trials, coefficients);
        double height = sums.height();
        double[] gradient = Arrays.copyOf(sums.gradient(), trials.each());
        RealMatrix bend = new Array2DRowRealMatrix(trials.each(), trials.each());
        for (int i = 0; i < trials.each(); i++) {
            for (int j = 0; j <= i; j++) {
                bend.setEntry(i, j, -sums.squares()[i][j]);
                bend.setEntry(j, i, -sums.squares()[i][j]);
            }
            NormalPrior prior = priors.get(i);
            double away = coefficients[i] - prior.mean();
            height -= away * away * prior.precision() / 2;
            gradient[i] -= away * prior.precision();
            bend.addToEntry(i, i, -prior.precision());
        }
        return new Slope(height, new ArrayRealVector(gradient, false), bend);
    }

    /// The logit of one group.
    double logit(int group, double[] coefficients) {
        double[] features = trials.features();
        int row = group * trials.width();
        double logit = 0;
        for (int i = 0; i < coefficients.length; i++) {
            logit += features[row + i] * coefficients[i];
        }
        return logit;
    }
}
