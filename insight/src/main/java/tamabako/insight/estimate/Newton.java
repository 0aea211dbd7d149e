package tamabako.insight.estimate;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import tamabako.insight.estimate.Curve.Slope;

/// Climbs a curve by its slope and bend.
final class Newton {

    private static final int MOST_STEPS = 100;
    private static final int MOST_HALVINGS = 40;

    /// The last step is taken when so little height is to be won; its error is the square of that.
    private static final double NO_MORE_TO_WIN = 1e-8;

    /// A step longer than this share of the way from zero is not the last: where data part cleanly,
    /// height runs out while the point runs away.
    private static final double STANDING_STILL = 1e-3;

    private static final double ALMOST_ZERO = 1e-10;

    private Newton() {}

    /// The top, or nothing where there is none: the point runs away, or several points are as high.
    static Optional<Peak> climb(Curve curve, RealVector start) {
        RealVector point = start;
        Slope here = curve.at(point);
        for (int step = 1; step <= MOST_STEPS && Double.isFinite(here.height()); step++) {
            RealMatrix curvature = here.bend().scalarMultiply(-1);
            Optional<CholeskyDecomposition> plain = decomposed(curvature);
            Optional<CholeskyDecomposition> used = plain.or(() -> decomposed(turned(curvature)));
            if (used.isEmpty()) {
                return Optional.empty();
            }
            RealVector move = used.get().getSolver().solve(here.gradient());
            double toWin = move.dotProduct(here.gradient());
            boolean still = move.getLInfNorm() < STANDING_STILL * (1 + point.getLInfNorm());
            if (plain.isPresent() && toWin < NO_MORE_TO_WIN && still) {
                RealVector top = point.add(move);
                Slope there = curve.at(top);
                int steps = step;
                return decomposed(there.bend().scalarMultiply(-1))
                        .map(last ->
                                new Peak(
                                        top, last.getSolver().getInverse(), there.height(), steps));
            }
            double length = 1;
            Slope next = curve.at(point.add(move));
            for (int i = 0; i < MOST_HALVINGS && !(next.height() > here.height()); i++) {
                length /= 2;
                next = curve.at(point.combine(1, length, move));
            }
            point = point.combine(1, length, move);
            here = next;
        }
        return Optional.empty();
    }

    /// The curvature with every direction that bends up turned down as much, so that the climb
    /// leaves a saddle as fast as it would near a top.
    ///
    /// Source: Dauphin and others, Advances in Neural Information Processing Systems 27 (2014).
    private static RealMatrix turned(RealMatrix curvature) {
        EigenDecompositionSymmetric parts =
                new EigenDecompositionSymmetric(curvature, ALMOST_ZERO, true);
        double least = ALMOST_ZERO * curvature.getNorm1();
        double[] down =
                Arrays.stream(parts.getEigenvalues())
                        .map(bend -> Math.max(Math.abs(bend), least))
                        .toArray();
        return parts.getV()
                .multiply(MatrixUtils.createRealDiagonalMatrix(down))
                .multiplyTransposed(parts.getV());
    }

    private static Optional<CholeskyDecomposition> decomposed(RealMatrix curvature) {
        try {
            return Optional.of(Positive.parts(curvature));
        } catch (MathIllegalArgumentException _) {
            return Optional.empty();
        }
    }
}
