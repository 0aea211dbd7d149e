package tamabako.insight.estimate;

import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// A smooth function of several quantities that has a top.
@FunctionalInterface
interface Curve {

    /// Height, gradient and matrix of second derivatives at a point.
    Slope at(RealVector point);

    /// How a curve goes on from one point.
    record Slope(double height, RealVector gradient, RealMatrix bend) {}
}
