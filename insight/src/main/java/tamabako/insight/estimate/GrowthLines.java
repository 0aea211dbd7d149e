package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// Straight lines of persons, each a little different from the common one: a linear mixed model
/// with random intercept and slope.
///
/// For how fast pupils become: x in days, y the logarithm of a time.
///
/// Source: Laird and Ware, Biometrics 38 (1982); the deviance as in Bates and others, Journal of
/// Statistical Software 67 (2015).
///
/// @param intercept of the common line, in units of y
/// @param slope of the common line, in units of y for each of x
/// @param interceptSpread standard deviation of persons' intercepts
/// @param slopeSpread standard deviation of persons' slopes
/// @param correlation of intercepts and slopes; NaN where one of them does not spread
/// @param residual standard deviation of points about a person's line
/// @param deviance twice the negative logarithm of the likelihood that was asked for
/// @param persons how each person's line differs from the common one
public record GrowthLines(
        Estimate intercept,
        Estimate slope,
        double interceptSpread,
        double slopeSpread,
        double correlation,
        double residual,
        double deviance,
        List<Line> persons) {

    /// A difference of lines.
    public record Line(double intercept, double slope) {}

    public GrowthLines {
        persons = List.copyOf(persons);
    }

    /// The most likely lines.
    ///
    /// @param persons at least two, with three points or more together and two or more different x
    public static GrowthLines of(List<LineSums> persons, Criterion criterion) {
        double[] spreads =
                Spreads.least(
                        at -> new Sums(persons, at).deviance(criterion),
                        new double[] {1, 0, 1},
                        new double[] {0, -1e6, 0});
        return new Sums(persons, spreads).lines(criterion);
    }

    /// All persons' sums, weighed by how persons spread.
    private static final class Sums {

        private final List<LineSums> persons;
        private final RealMatrix spread;
        private final RealMatrix squares = MatrixUtils.createRealMatrix(2, 2);
        private RealVector products = MatrixUtils.createRealVector(new double[2]);
        private double left;
        private double logDeterminant;
        private double points;

        /// @param relative the lower half of the root of the spread, in units of the residual
        Sums(List<LineSums> persons, double[] relative) {
            this.persons = persons;
            this.spread =
                    MatrixUtils.createRealMatrix(
                            new double[][] {{relative[0], 0}, {relative[1], relative[2]}});
            for (LineSums person : persons) {
                RealMatrix inner = inner(person);
                RealMatrix drawn = drawn(inner);
                RealMatrix own = squares(person);
                RealVector ownProducts = products(person);
                squares.setSubMatrix(
                        squares.add(own.subtract(own.multiply(drawn).multiply(own))).getData(),
                        0,
                        0);
                RealVector pulled = drawn.operate(ownProducts);
                products = products.add(ownProducts).subtract(own.operate(pulled));
                left += person.yy() - ownProducts.dotProduct(pulled);
                logDeterminant += Positive.logDeterminant(inner);
                points += person.n();
            }
            left -= products.dotProduct(line());
        }

        private static RealMatrix squares(LineSums person) {
            return MatrixUtils.createRealMatrix(
                    new double[][] {{person.n(), person.x()}, {person.x(), person.xx()}});
        }

        private static RealVector products(LineSums person) {
            return MatrixUtils.createRealVector(new double[] {person.y(), person.xy()});
        }

        private RealMatrix inner(LineSums person) {
            return spread.transposeMultiply(squares(person))
                    .multiply(spread)
                    .add(MatrixUtils.createRealIdentityMatrix(2));
        }

        /// How strongly a person's own line is drawn out of the person's products.
        private RealMatrix drawn(RealMatrix inner) {
            RealMatrix inverse = Positive.inverse(inner);
            return spread.multiply(inverse).multiplyTransposed(spread);
        }

        private RealVector line() {
            return Positive.solve(squares, products);
        }

        private double free(Criterion criterion) {
            return switch (criterion) {
                case LIKELIHOOD -> points;
                case RESTRICTED -> points - 2;
            };
        }

        double deviance(Criterion criterion) {
            double free = free(criterion);
            double fixed =
                    switch (criterion) {
                        case LIKELIHOOD -> 0;
                        case RESTRICTED -> Positive.logDeterminant(squares);
                    };
            return logDeterminant + fixed + free * (1 + Math.log(2 * Math.PI * left / free));
        }

        GrowthLines lines(Criterion criterion) {
            double variance = left / free(criterion);
            RealVector line = line();
            RealMatrix errors = Positive.inverse(squares);
            RealMatrix covariance = spread.multiplyTransposed(spread).scalarMultiply(variance);
            double interceptSpread = Math.sqrt(covariance.getEntry(0, 0));
            double slopeSpread = Math.sqrt(covariance.getEntry(1, 1));
            List<Line> differences = new ArrayList<>();
            for (LineSums person : persons) {
                RealVector away = products(person).subtract(squares(person).operate(line));
                RealVector own = drawn(inner(person)).operate(away);
                differences.add(new Line(own.getEntry(0), own.getEntry(1)));
            }
            return new GrowthLines(
                    new Estimate(line.getEntry(0), Math.sqrt(variance * errors.getEntry(0, 0))),
                    new Estimate(line.getEntry(1), Math.sqrt(variance * errors.getEntry(1, 1))),
                    interceptSpread,
                    slopeSpread,
                    covariance.getEntry(0, 1) / (interceptSpread * slopeSpread),
                    Math.sqrt(variance),
                    deviance(criterion),
                    differences);
        }
    }
}
