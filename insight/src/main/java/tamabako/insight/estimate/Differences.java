package tamabako.insight.estimate;

import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// A curve of which only the height is worked out: slope and bend come from heights close by.
///
/// @param height of each point; must not vary by rounding more than some 1e-9
record Differences(ToDoubleFunction<RealVector> height) implements Curve {

    /// Wide enough that rounding does not show in the bend, close enough that third differences do
    /// not.
    private static final double APART = 1e-3;

    @Override
    public Slope at(RealVector point) {
        int size = point.getDimension();
        double here = height.applyAsDouble(point);
        double[] up = new double[size];
        double[] down = new double[size];
        RealVector gradient = new ArrayRealVector(size);
        RealMatrix bend = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            up[i] = moved(point, i, 1, i, 0);
            down[i] = moved(point, i, -1, i, 0);
            gradient.setEntry(i, (up[i] - down[i]) / (2 * APART));
            bend.setEntry(i, i, (up[i] - 2 * here + down[i]) / (APART * APART));
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                double together = moved(point, i, 1, j, 1) + moved(point, i, -1, j, -1);
                double apart = up[i] + down[i] + up[j] + down[j] - 2 * here;
                double both = (together - apart) / (2 * APART * APART);
                bend.setEntry(i, j, both);
                bend.setEntry(j, i, both);
            }
        }
        return new Slope(here, gradient, bend);
    }

    private double moved(RealVector point, int i, int stepsI, int j, int stepsJ) {
        RealVector there = point.copy();
        there.addToEntry(i, stepsI * APART);
        there.addToEntry(j, stepsJ * APART);
        return height.applyAsDouble(there);
    }
}
