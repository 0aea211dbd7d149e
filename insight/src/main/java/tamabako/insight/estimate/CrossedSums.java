package tamabako.insight.estimate;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/// What times of persons at problems come to.
///
/// @param taken how many times there are of each person (row) at each problem (column)
/// @param byPerson the sum of each person's logarithms
/// @param byProblem the sum of each problem's logarithms
/// @param squares the sum of the squares of all logarithms
public record CrossedSums(
        RealMatrix taken, RealVector byPerson, RealVector byProblem, double squares) {

    /// One time.
    ///
    /// @param person from zero
    /// @param problem from zero
    /// @param log natural logarithm of the time, in whatever unit
    public record Time(int person, int problem, double log) {}

    /// Sums times.
    public static CrossedSums of(int persons, int problems, List<Time> times) {
        RealMatrix taken = MatrixUtils.createRealMatrix(persons, problems);
        RealVector byPerson = MatrixUtils.createRealVector(new double[persons]);
        RealVector byProblem = MatrixUtils.createRealVector(new double[problems]);
        double squares = 0;
        for (Time time : times) {
            taken.addToEntry(time.person(), time.problem(), 1);
            byPerson.addToEntry(time.person(), time.log());
            byProblem.addToEntry(time.problem(), time.log());
            squares += time.log() * time.log();
        }
        return new CrossedSums(taken, byPerson, byProblem, squares);
    }
}
