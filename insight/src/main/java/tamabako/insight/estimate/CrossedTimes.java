package tamabako.insight.estimate;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// How long persons take over problems: the logarithm of a time is what the problem's features make
/// it, plus the person's slowness, plus what the problem has of its own, plus chance.
///
/// A linear mixed model with crossed effects of persons and problems, by greatest likelihood.
///
/// Source: van der Linden, Journal of Educational and Behavioral Statistics 31 (2006); Baayen,
/// Davidson and Bates, Journal of Memory and Language 59 (2008).
///
/// @param effects how much longer each feature makes a time, in natural logarithms
/// @param personSpread standard deviation of persons
/// @param problemSpread standard deviation of what problems have of their own
/// @param residual standard deviation of one person's times at one problem
/// @param logLikelihood natural logarithm
/// @param persons how much slower than others each person is, in natural logarithms
/// @param problems how much longer each problem takes than its features say, in natural logarithms
public record CrossedTimes(
        List<Estimate> effects,
        double personSpread,
        double problemSpread,
        double residual,
        double logLikelihood,
        List<Estimate> persons,
        List<Double> problems) {

    public CrossedTimes {
        effects = List.copyOf(effects);
        persons = List.copyOf(persons);
        problems = List.copyOf(problems);
    }

    /// The most likely effects.
    ///
    /// @param features of the problems, one of them one in every problem
    public static CrossedTimes of(Features features, CrossedSums sums) {
        if (features.problems() != sums.byProblem().getDimension()) {
            throw new IllegalArgumentException(
                    "Features of %d problems, times of %d."
                            .formatted(features.problems(), sums.byProblem().getDimension()));
        }
        double[] spreads =
                Spreads.least(
                        at -> new Weighed(features, sums, at[0], at[1]).deviance(),
                        new double[] {1, 1},
                        new double[] {0, 0});
        return new Weighed(features, sums, spreads[0], spreads[1]).times();
    }

    /// The sums, weighed by how persons and problems spread in units of the residual.
    ///
    /// Problems are worked out of the equations first: no time is of two problems, so that leaves
    /// as many equations as there are persons and features.
    private static final class Weighed {

        private final Features features;
        private final CrossedSums sums;
        private final double personSpread;
        private final double problemSpread;
        private final int persons;
        private final RealVector times;
        private final RealVector kept;
        private final CholeskyDecomposition parts;
        private final RealVector solution;
        private final double left;

        Weighed(Features features, CrossedSums sums, double personSpread, double problemSpread) {
            this.features = features;
            this.sums = sums;
            this.personSpread = personSpread;
            this.problemSpread = problemSpread;
            persons = sums.byPerson().getDimension();
            times = sums.taken().preMultiply(ones(persons));
            kept = times.map(n -> 1 / (1 + problemSpread * problemSpread * n));
            RealMatrix own = own();
            RealMatrix drawn = drawn(own);
            parts = Positive.parts(plain().subtract(drawn.multiplyTransposed(own)));
            RealVector products =
                    sums.byPerson()
                            .mapMultiply(personSpread)
                            .append(features.rows().preMultiply(sums.byProblem()))
                            .subtract(drawn.operate(sums.byProblem()));
            solution = parts.getSolver().solve(products);
            left =
                    sums.squares()
                            - problemSpread
                                    * problemSpread
                                    * kept.ebeMultiply(sums.byProblem())
                                            .dotProduct(sums.byProblem())
                            - solution.dotProduct(products);
        }

        private static RealVector ones(int size) {
            return new ArrayRealVector(size, 1);
        }

        /// Persons and features against problems.
        private RealMatrix own() {
            int each = features.each();
            RealMatrix own = MatrixUtils.createRealMatrix(persons + each, features.problems());
            own.setSubMatrix(sums.taken().scalarMultiply(personSpread).getData(), 0, 0);
            RealMatrix diagonal = MatrixUtils.createRealDiagonalMatrix(times.toArray());
            own.setSubMatrix(features.rows().transposeMultiply(diagonal).getData(), persons, 0);
            return own;
        }

        /// The same as far as a problem's own effect takes it up.
        private RealMatrix drawn(RealMatrix own) {
            RealVector pull = kept.mapMultiply(problemSpread * problemSpread);
            return own.multiply(MatrixUtils.createRealDiagonalMatrix(pull.toArray()));
        }

        /// Persons and features against each other, as if problems had nothing of their own.
        private RealMatrix plain() {
            RealMatrix rows = features.rows();
            int size = persons + features.each();
            RealMatrix plain = MatrixUtils.createRealMatrix(size, size);
            RealVector counts = sums.taken().operate(ones(features.problems()));
            for (int p = 0; p < persons; p++) {
                plain.setEntry(p, p, 1 + personSpread * personSpread * counts.getEntry(p));
            }
            RealMatrix across = sums.taken().multiply(rows).scalarMultiply(personSpread);
            plain.setSubMatrix(across.getData(), 0, persons);
            plain.setSubMatrix(across.transpose().getData(), persons, 0);
            RealMatrix diagonal = MatrixUtils.createRealDiagonalMatrix(times.toArray());
            plain.setSubMatrix(
                    rows.transposeMultiply(diagonal.multiply(rows)).getData(), persons, persons);
            return plain;
        }

        double deviance() {
            double log = -kept.map(Math::log).dotProduct(ones(features.problems()));
            log += Positive.logDeterminant(parts, persons);
            double all = times.getL1Norm();
            return log + all * (1 + Math.log(2 * Math.PI * left / all));
        }

        CrossedTimes times() {
            double variance = left / times.getL1Norm();
            RealMatrix errors = parts.getSolver().getInverse().scalarMultiply(variance);
            List<Estimate> all =
                    IntStream.range(0, solution.getDimension())
                            .mapToObj(i -> estimate(i, errors.getEntry(i, i)))
                            .toList();
            RealVector slow = solution.getSubVector(0, persons).mapMultiply(personSpread);
            RealVector effects = solution.getSubVector(persons, features.each());
            RealVector expected =
                    sums.taken()
                            .preMultiply(slow)
                            .add(times.ebeMultiply(features.rows().operate(effects)));
            RealVector beside =
                    sums.byProblem()
                            .subtract(expected)
                            .ebeMultiply(kept)
                            .mapMultiply(problemSpread * problemSpread);
            return new CrossedTimes(
                    all.subList(persons, all.size()),
                    personSpread * Math.sqrt(variance),
                    problemSpread * Math.sqrt(variance),
                    Math.sqrt(variance),
                    -deviance() / 2,
                    all.subList(0, persons),
                    Arrays.stream(beside.toArray()).boxed().toList());
        }

        private Estimate estimate(int i, double variance) {
            double unit = i < persons ? personSpread : 1;
            return new Estimate(unit * solution.getEntry(i), unit * Math.sqrt(variance));
        }
    }
}
