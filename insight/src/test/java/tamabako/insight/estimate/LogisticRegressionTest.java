package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/// Logistic regression against R's glm and optim.
class LogisticRegressionTest {

    private static final List<String> BIRTHS = List.of("age", "lwt", "smoke", "ht", "ui");

    /// A constant, then the columns.
    private static double[][] rows(List<List<Double>> columns) {
        double[][] rows = new double[columns.getFirst().size()][columns.size() + 1];
        for (int i = 0; i < rows.length; i++) {
            rows[i][0] = 1;
            for (int j = 0; j < columns.size(); j++) {
                rows[i][j + 1] = columns.get(j).get(i);
            }
        }
        return rows;
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(x -> x).toArray();
    }

    private static void isAsExpected(LogisticFit found, List<Double> errors, Table expected) {
        Table terms = expected.where(row -> !"NA".equals(row.get("se")));
        Largest.between(RaschTest.values(found.coefficients()), terms.numbers("est"))
                .isAtMost(1e-6);
        Largest.between(RaschTest.errors(found.coefficients()), errors).isAtMost(1e-6);
        assertThat(found.deviance())
                .isCloseTo(expected.where("term", "deviance").number("est"), within(1e-6));
        assertThat(found.logLikelihood())
                .isCloseTo(expected.where("term", "logLik").number("est"), within(1e-6));
    }

    @Test
    void ageAtMenarcheInGroups() {
        Table girls = Table.read("menarche");
        Table expected = Table.read("logistic").where("model", "menarche");

        LogisticFit found =
                LogisticRegression.fit(
                                Trials.of(
                                        rows(List.of(girls.numbers("Age"))),
                                        array(girls.numbers("Menarche")),
                                        array(girls.numbers("Total"))))
                        .orElseThrow();

        // glm takes errors from the last step but one, 1.2e-6 off here; these are glm's own with
        // its
        // epsilon at 1e-15.
        List<Double> errors = List.of(0.770685884387408, 0.058953174618688);
        isAsExpected(found, errors, expected);
    }

    /// Each birth by itself, as the deviance counts them.
    private static List<List<Double>> births() {
        Table groups = Table.read("birthwt");
        List<List<Double>> rows = new ArrayList<>();
        for (int i = 0; i < groups.rows().size(); i++) {
            for (int k = 0; k < groups.wholes("births").get(i); k++) {
                List<Double> row = new ArrayList<>();
                for (String column : BIRTHS) {
                    row.add(groups.numbers(column).get(i));
                }
                row.add(k < groups.wholes("low").get(i) ? 1.0 : 0.0);
                rows.add(row);
            }
        }
        return rows;
    }

    private static List<Double> column(List<List<Double>> rows, int column) {
        return rows.stream().map(row -> row.get(column)).toList();
    }

    @Test
    void lowWeightAtBirthOneByOne() {
        Table expected = Table.read("logistic").where("model", "birthwt low~age+lwt+smoke+ht+ui");
        List<List<Double>> births = births();
        List<List<Double>> columns = new ArrayList<>();
        for (int i = 0; i < BIRTHS.size(); i++) {
            columns.add(column(births, i));
        }

        LogisticFit found =
                LogisticRegression.fit(
                                Trials.of(rows(columns), array(column(births, BIRTHS.size()))))
                        .orElseThrow();

        List<Double> errors = expected.where(row -> !"NA".equals(row.get("se"))).numbers("se");
        isAsExpected(found, errors, expected);
    }

    @Test
    void lowWeightAtBirthWithANormalPriorOnEachSlope() {
        Table expected = Table.read("logistic-ridge");
        List<List<Double>> births = births();
        List<List<Double>> columns = new ArrayList<>();
        for (int i = 0; i < BIRTHS.size(); i++) {
            List<Double> column = column(births, i);
            DescriptiveStatistics all = new DescriptiveStatistics(array(column));
            columns.add(
                    column.stream()
                            .map(x -> (x - all.getMean()) / all.getStandardDeviation())
                            .toList());
        }
        List<NormalPrior> priors = new ArrayList<>(List.of(NormalPrior.FLAT));
        priors.addAll(Collections.nCopies(BIRTHS.size(), new NormalPrior(0, 1)));

        LogisticFit found =
                LogisticRegression.fit(
                                Trials.of(rows(columns), array(column(births, BIRTHS.size()))),
                                priors)
                        .orElseThrow();

        Largest.between(RaschTest.values(found.coefficients()), expected.numbers("map"))
                .isAtMost(1e-5);
        Largest.between(RaschTest.errors(found.coefficients()), expected.numbers("laplace_sd"))
                .isAtMost(1e-5);
    }

    @Test
    void whatPartsCleanlyHasNoCoefficientsOfGreatestLikelihood() {
        Trials parted = Trials.of(new double[][] {{1, 1}, {1, 2}, {1, 3}}, new double[] {0, 0, 1});

        assertThat(LogisticRegression.fit(parted)).isEmpty();
    }

    @Test
    void whatPartsCleanlyHasCoefficientsWithAPrior() {
        Trials parted = Trials.of(new double[][] {{1, 1}, {1, 2}, {1, 3}}, new double[] {0, 0, 1});
        NormalPrior prior = new NormalPrior(0, 1);

        assertThat(LogisticRegression.fit(parted, List.of(prior, prior))).isPresent();
    }

    /// Rows are worked four at a time; whatever is left over counts too.
    @Test
    void anyNumberOfRowsComesToTheSameInGroups() {
        SplittableRandom chance = new SplittableRandom(5);
        for (int size = 20; size < 28; size++) {
            double[][] rows = new double[size][];
            double[] well = new double[size];
            double[][] twice = new double[2 * size][];
            double[] wellTwice = new double[2 * size];
            double[] two = new double[size];
            for (int i = 0; i < size; i++) {
                rows[i] = new double[] {1, chance.nextGaussian(), chance.nextGaussian()};
                well[i] = chance.nextInt(3);
                two[i] = 2;
                twice[2 * i] = rows[i];
                twice[2 * i + 1] = rows[i];
                wellTwice[2 * i] = well[i] > 0 ? 1 : 0;
                wellTwice[2 * i + 1] = well[i] > 1 ? 1 : 0;
            }

            LogisticFit groups = LogisticRegression.fit(Trials.of(rows, well, two)).orElseThrow();
            LogisticFit single = LogisticRegression.fit(Trials.of(twice, wellTwice)).orElseThrow();

            Largest.between(
                            RaschTest.values(groups.coefficients()),
                            RaschTest.values(single.coefficients()))
                    .isAtMost(1e-9);
        }
    }
}
