package tamabako.insight.estimate;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// The top of a [Curve].
///
/// @param covariance the inverse of the curvature at the top
/// @param steps steps that the climb took
record Peak(RealVector point, RealMatrix covariance, double height, int steps) {

    /// The quantities in order.
    List<Estimate> estimates() {
        return IntStream.range(0, point.getDimension())
                .mapToObj(
                        i -> new Estimate(point.getEntry(i), Math.sqrt(covariance.getEntry(i, i))))
                .toList();
    }

    /// Sums of the quantities, each row of `weights` one sum.
    List<Estimate> sums(RealMatrix weights) {
        RealVector values = weights.operate(point);
        return IntStream.range(0, weights.getRowDimension())
                .mapToObj(i -> {
                    RealVector row = weights.getRowVector(i);
                    double variance = row.dotProduct(covariance.operate(row));
                    return new Estimate(values.getEntry(i), Math.sqrt(variance));
                })
                .toList();
    }
}
