package tamabako.insight.estimate;

import java.util.List;
import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/// What is known of each problem before anybody sat it: a row of numbers, for example how often
/// each technique comes in it.
public final class Features {

    private final RealMatrix rows;

    private Features(RealMatrix rows) {
        this.rows = rows;
    }

    /// One row of features for each problem, all rows of one length.
    public static Features of(List<List<Double>> problems) {
        double[][] rows =
                problems.stream()
                        .map(row -> row.stream().mapToDouble(x -> x).toArray())
                        .toArray(double[][]::new);
        return new Features(MatrixUtils.createRealMatrix(rows));
    }

    /// Each problem is like no other.
    static Features own(int problems) {
        return new Features(MatrixUtils.createRealIdentityMatrix(problems));
    }

    /// Each problem is like no other, and together they come to nothing: the last is what the
    /// others leave.
    static Features ownAboutZero(int problems) {
        RealMatrix rows = MatrixUtils.createRealMatrix(problems, problems - 1);
        for (int i = 0; i < problems - 1; i++) {
            rows.setEntry(i, i, 1);
            rows.setEntry(problems - 1, i, -1);
        }
        return new Features(rows);
    }

    /// The same features, given to other problems: problem i gets the row of problem `order[i]`.
    Features permuted(int[] order) {
        int[] columns = new int[each()];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = i;
        }
        return new Features(rows.getSubMatrix(order, columns));
    }

    /// How many problems there are.
    public int problems() {
        return rows.getRowDimension();
    }

    /// How many features each problem has.
    public int each() {
        return rows.getColumnDimension();
    }

    RealMatrix rows() {
        return rows;
    }

    /// What the features of a problem come to, where each counts for its effect.
    DerivativeStructure sum(int problem, List<DerivativeStructure> effects) {
        DerivativeStructure sum = effects.getFirst().getField().getZero();
        for (int i = 0; i < each(); i++) {
            double feature = rows.getEntry(problem, i);
            if (feature != 0) {
                sum = sum.add(effects.get(i).multiply(feature));
            }
        }
        return sum;
    }
}
