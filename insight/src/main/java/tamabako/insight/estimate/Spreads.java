package tamabako.insight.estimate;

import java.util.Arrays;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;

/// Finds how far things spread: the spreads at which a deviance is least, where some may be zero.
///
/// Source: Powell's BOBYQA (2009), as lme4 uses it; Hipparchus.
final class Spreads {

    private static final int MOST_TRIES = 10_000;
    private static final double FIRST_STEP = 0.2;
    private static final double LAST_STEP = 1e-7;

    private Spreads() {}

    /// The point of least deviance.
    ///
    /// @param lowest bound of each number
    static double[] least(MultivariateFunction deviance, double[] start, double[] lowest) {
        double[] highest = new double[start.length];
        Arrays.fill(highest, 1e6);
        return new BOBYQAOptimizer(2 * start.length + 1, FIRST_STEP, LAST_STEP)
                .optimize(
                        new MaxEval(MOST_TRIES),
                        new ObjectiveFunction(deviance),
                        GoalType.MINIMIZE,
                        new InitialGuess(start),
                        new SimpleBounds(lowest, highest))
                .getPoint();
    }
}
