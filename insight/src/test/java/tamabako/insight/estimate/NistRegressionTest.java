package tamabako.insight.estimate;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/// The library's linear regression (by orthogonal parts) against certified values.
class NistRegressionTest {

    private static final double NINE_DIGITS = 1e-9;
    private static final double SIX_DIGITS = 1e-6;

    private static double[][] powers(List<Double> x, int most) {
        return x.stream()
                .map(at ->
                        IntStream.rangeClosed(1, most)
                                .mapToDouble(power -> Math.pow(at, power))
                                .toArray())
                .toArray(double[][]::new);
    }

    private static OLSMultipleLinearRegression regression(
            List<Double> y, double[][] x, boolean intercept) {
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.setNoIntercept(!intercept);
        regression.newSampleData(y.stream().mapToDouble(v -> v).toArray(), x);
        return regression;
    }

    private static List<Double> list(double[] numbers) {
        return Arrays.stream(numbers).boxed().toList();
    }

    private static void isCertified(
            String name, OLSMultipleLinearRegression found, double coefficients, double rest) {
        Table certified = Table.read("nist-linear").where("dataset", name);
        Table terms = certified.where(row -> row.getOrDefault("parameter", "").startsWith("B"));
        Largest.shareBetween(list(found.estimateRegressionParameters()), terms.numbers("certified"))
                .isAtMost(coefficients);
        Largest.shareBetween(
                        list(found.estimateRegressionParametersStandardErrors()),
                        terms.numbers("certified_sd"))
                .isAtMost(rest);
        Largest.shareBetween(
                        List.of(found.calculateRSquared(), found.estimateRegressionStandardError()),
                        List.of(
                                certified.where("parameter", "R2").number("certified"),
                                certified.where("parameter", "residual_sd").number("certified")))
                .isAtMost(rest);
    }

    private static OLSMultipleLinearRegression of(String name, int powers, boolean intercept) {
        Table data = Table.read("nist-" + name.toLowerCase(Locale.ROOT));
        return regression(data.numbers("y"), powers(data.numbers("x1"), powers), intercept);
    }

    @Test
    void straightLines() {
        isCertified("Norris", of("Norris", 1, true), NINE_DIGITS, NINE_DIGITS);
        isCertified("NoInt1", of("NoInt1", 1, false), NINE_DIGITS, NINE_DIGITS);
        isCertified("NoInt2", of("NoInt2", 1, false), NINE_DIGITS, NINE_DIGITS);
    }

    @Test
    void aParabola() {
        isCertified("Pontius", of("Pontius", 2, true), NINE_DIGITS, NINE_DIGITS);
    }

    @Test
    void sixColumnsThatSayNearlyTheSame() {
        Table data = Table.read("nist-longley");
        List<List<Double>> columns =
                IntStream.rangeClosed(1, 6).mapToObj(i -> data.numbers("x" + i)).toList();
        double[][] rows =
                IntStream.range(0, data.rows().size())
                        .mapToObj(i -> columns.stream().mapToDouble(c -> c.get(i)).toArray())
                        .toArray(double[][]::new);

        isCertified("Longley", regression(data.numbers("y"), rows, true), NINE_DIGITS, NINE_DIGITS);
    }

    @Test
    void theTenthPowerOfSmallNumbers() {
        isCertified("Filip", of("Filip", 10, true), SIX_DIGITS, SIX_DIGITS);
    }

    /// All coefficients are one, or powers of a tenth. Noise grows a hundredfold with each set from
    /// the third; in the last it is so large that 1e-6 of a coefficient is 1e-9 of its error, or
    /// less.
    @Test
    void theFifthPowerUnderMoreAndMoreNoise() {
        Table data = Table.read("nist-wampler");
        double[][] powers = powers(data.numbers("x"), 5);
        double[] coefficients = {NINE_DIGITS, NINE_DIGITS, NINE_DIGITS, 2e-8, 2e-6};
        for (int i = 1; i <= coefficients.length; i++) {
            isCertified(
                    "Wampler" + i,
                    regression(data.numbers("y" + i), powers, true),
                    coefficients[i - 1],
                    NINE_DIGITS);
        }
    }
}
