package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/// Intraclass correlations out of the library's regression and F distribution, against psych's.
///
/// No judgement of ours is made by several judges, so nothing is made of them but this.
class IntraclassTest {

    /// Six persons, four judges: Shrout and Fleiss, Psychological Bulletin 86 (1979), table 2.
    private static final double[][] JUDGED = {
        {9, 2, 5, 8}, {6, 1, 3, 2}, {8, 4, 6, 8}, {7, 1, 2, 6}, {10, 5, 6, 9}, {6, 2, 4, 7}
    };

    private static final int PERSONS = JUDGED.length;
    private static final int JUDGES = JUDGED[0].length;

    /// What persons and judges leave, each told or not.
    private static double squaresLeft(boolean persons, boolean judges) {
        List<double[]> rows = new ArrayList<>();
        double[] said = new double[PERSONS * JUDGES];
        for (int p = 0; p < PERSONS; p++) {
            for (int j = 0; j < JUDGES; j++) {
                double[] row = new double[(persons ? PERSONS - 1 : 0) + (judges ? JUDGES - 1 : 0)];
                if (persons && p > 0) {
                    row[p - 1] = 1;
                }
                if (judges && j > 0) {
                    row[(persons ? PERSONS - 1 : 0) + j - 1] = 1;
                }
                said[rows.size()] = JUDGED[p][j];
                rows.add(row);
            }
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(said, rows.toArray(double[][]::new));
        return regression.calculateResidualSumOfSquares();
    }

    /// One coefficient with its test and interval.
    private static List<Double> row(
            double coefficient, double f, double df1, double df2, double lower, double upper) {
        return List.of(coefficient, f, df1, df2, lower, upper);
    }

    private static double quantile(double df1, double df2) {
        return new FDistribution(df1, df2).inverseCumulativeProbability(0.975);
    }

    @Test
    void theSixCoefficientsOfShroutAndFleissAreThoseOfPsych() {
        double n = PERSONS;
        double k = JUDGES;
        double rest = squaresLeft(true, true) / ((n - 1) * (k - 1));
        double within = squaresLeft(true, false) / (n * (k - 1));
        double persons = (squaresLeft(false, true) - squaresLeft(true, true)) / (n - 1);
        double judges = (squaresLeft(true, false) - squaresLeft(true, true)) / (k - 1);
        double df1 = n - 1;
        double df2 = (n - 1) * (k - 1);
        double dfWithin = n * (k - 1);
        List<List<Double>> found = new ArrayList<>();

        double f1 = persons / within;
        double low1 = f1 / quantile(df1, dfWithin);
        double high1 = f1 * quantile(dfWithin, df1);
        double f3 = persons / rest;
        double low3 = f3 / quantile(df1, df2);
        double high3 = f3 * quantile(df2, df1);
        double two = (persons - rest) / (persons + (k - 1) * rest + k * (judges - rest) / n);
        double fj = judges / rest;
        double top = k * two * fj + n * (1 + (k - 1) * two) - k * two;
        double v =
                (k - 1)
                        * (n - 1)
                        * top
                        * top
                        / ((n - 1) * k * k * two * two * fj * fj
                                + Math.pow(n * (1 + (k - 1) * two) - k * two, 2));
        double above = quantile(n - 1, v);
        double below = quantile(v, n - 1);
        double low2 =
                n
                        * (persons - above * rest)
                        / (above * (k * judges + (k * n - k - n) * rest) + n * persons);
        double high2 =
                n
                        * (below * persons - rest)
                        / (k * judges + (k * n - k - n) * rest + n * below * persons);
        found.add(
                row(
                        (f1 - 1) / (f1 + k - 1),
                        f1,
                        df1,
                        dfWithin,
                        (low1 - 1) / (low1 + k - 1),
                        (high1 - 1) / (high1 + k - 1)));
        found.add(row(two, f3, df1, df2, low2, high2));
        found.add(
                row(
                        (f3 - 1) / (f3 + k - 1),
                        f3,
                        df1,
                        df2,
                        (low3 - 1) / (low3 + k - 1),
                        (high3 - 1) / (high3 + k - 1)));
        found.add(row(1 - 1 / f1, f1, df1, dfWithin, 1 - 1 / low1, 1 - 1 / high1));
        found.add(
                row(
                        (persons - rest) / (persons + (judges - rest) / n),
                        f3,
                        df1,
                        df2,
                        k * low2 / (1 + (k - 1) * low2),
                        k * high2 / (1 + (k - 1) * high2)));
        found.add(row(1 - 1 / f3, f3, df1, df2, 1 - 1 / low3, 1 - 1 / high3));

        Table expected = Table.read("icc");
        List<String> columns = List.of("ICC", "F", "df1", "df2", "lower95", "upper95");
        for (int c = 0; c < columns.size(); c++) {
            int column = c;
            Largest.between(
                            found.stream().map(row -> row.get(column)).toList(),
                            expected.numbers(columns.get(c)))
                    .isAtMost(1e-6);
        }
    }
}
