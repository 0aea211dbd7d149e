package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.differentiation.DSFactory;
import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import tamabako.insight.estimate.Curve.Slope;

/// How likely what was seen is, as a function of what is not known.
///
/// It is written once, in numbers that carry their derivatives along, so that no derivative is
/// worked out by hand.
@FunctionalInterface
interface Likelihood {

    /// The logarithm of the likelihood.
    DerivativeStructure of(List<DerivativeStructure> unknown);

    /// The logarithm with its slope and bend.
    default Curve curve() {
        return this::at;
    }

    private Slope at(RealVector point) {
        int size = point.getDimension();
        DSFactory factory = new DSFactory(size, 2);
        List<DerivativeStructure> unknown = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            unknown.add(factory.variable(i, point.getEntry(i)));
        }
        DerivativeStructure height = of(unknown);
        RealVector gradient = new ArrayRealVector(size);
        RealMatrix bend = new Array2DRowRealMatrix(size, size);
        int[] orders = new int[size];
        for (int i = 0; i < size; i++) {
            orders[i]++;
            gradient.setEntry(i, height.getPartialDerivative(orders));
            for (int j = 0; j < size; j++) {
                orders[j]++;
                bend.setEntry(i, j, height.getPartialDerivative(orders));
                orders[j]--;
            }
            orders[i]--;
        }
        return new Slope(height.getValue(), gradient, bend);
    }
}
