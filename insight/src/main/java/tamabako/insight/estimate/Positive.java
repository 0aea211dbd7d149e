package tamabako.insight.estimate;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// Positive definite matrices, which sums in floating point leave a little uneven.
final class Positive {

    private static final double ALMOST_SYMMETRIC = 1e-8;
    private static final double SMALLEST = 1e-14;

    private Positive() {}

    /// The matrix as a root times itself.
    ///
    /// @throws org.hipparchus.exception.MathIllegalArgumentException if it is not positive definite
    static CholeskyDecomposition parts(RealMatrix matrix) {
        return new CholeskyDecomposition(matrix, ALMOST_SYMMETRIC, SMALLEST * matrix.getNorm1());
    }

    static RealMatrix inverse(RealMatrix matrix) {
        return parts(matrix).getSolver().getInverse();
    }

    static RealVector solve(RealMatrix matrix, RealVector right) {
        return parts(matrix).getSolver().solve(right);
    }

    /// The logarithm of the determinant of the upper left part.
    static double logDeterminant(CholeskyDecomposition parts, int size) {
        double log = 0;
        for (int i = 0; i < size; i++) {
            log += 2 * Math.log(parts.getL().getEntry(i, i));
        }
        return log;
    }

    static double logDeterminant(RealMatrix matrix) {
        return logDeterminant(parts(matrix), matrix.getRowDimension());
    }
}
