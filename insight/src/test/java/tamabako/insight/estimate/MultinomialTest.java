package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;

/// Choices among several: models that no judgement of ours needs, on the same derivatives, climb
/// and gamma function as the others.
class MultinomialTest {

    private static final List<String> KINDS = List.of("setosa", "versicolor", "virginica");

    /// The first kind's coefficients are zero; then come those of the second and the third.
    private static Likelihood irises(List<String> kinds) {
        Table irises = Table.read("iris");
        List<Double> lengths = irises.numbers("length");
        List<Double> widths = irises.numbers("width");
        List<List<Integer>> counts = kinds.stream().map(irises::wholes).toList();
        return unknown -> {
            DerivativeStructure zero = unknown.getFirst().getField().getZero();
            DerivativeStructure log = zero;
            for (int i = 0; i < lengths.size(); i++) {
                List<DerivativeStructure> logits = new ArrayList<>(List.of(zero));
                for (int k = 0; k < kinds.size() - 1; k++) {
                    logits.add(
                            unknown.get(3 * k)
                                    .add(unknown.get(3 * k + 1).multiply(lengths.get(i)))
                                    .add(unknown.get(3 * k + 2).multiply(widths.get(i))));
                }
                DerivativeStructure all = Logits.logSum(logits);
                for (int k = 0; k < kinds.size(); k++) {
                    log = log.add(logits.get(k).subtract(all).multiply(counts.get(k).get(i)));
                }
            }
            return log;
        };
    }

    private static RealVector given() {
        return new ArrayRealVector(
                Table.read("multinom-iris").numbers("est").stream().mapToDouble(x -> x).toArray());
    }

    @Test
    void theDevianceOfTheGivenCoefficientsIsThatOfNnet() {
        Curve.Slope there = irises(KINDS).curve().at(given());

        assertThat(-2 * there.height()).isCloseTo(110.3371, within(1e-3));
    }

    /// nnet stops where it is no longer worth while: setosa parts cleanly from the others, so there
    /// are no coefficients of greatest likelihood, and the deviance goes on falling.
    @Test
    void oneKindPartsCleanlySoThereIsNoTop() {
        assertThat(Newton.climb(irises(KINDS).curve(), new ArrayRealVector(6))).isEmpty();
    }

    /// What can be told are the two others.
    @Test
    void theTwoOthersDifferAsNnetSays() {
        Peak found =
                Newton.climb(
                                irises(List.of("versicolor", "virginica")).curve(),
                                new ArrayRealVector(3))
                        .orElseThrow();

        RealVector given = given();
        List<Double> differences =
                IntStream.range(0, 3)
                        .mapToObj(i -> given.getEntry(3 + i) - given.getEntry(i))
                        .toList();
        Largest.between(RaschTest.values(found.estimates()), differences).isAtMost(1e-3);
    }

    @Test
    void theDirichletMultinomialIsAsTheClosedFormSays() {
        Table table = Table.read("dirichlet-multinomial");
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < table.rows().size(); i++) {
            double[] counts = numbers(table.words("x").get(i));
            double[] weights = numbers(table.words("alpha").get(i));
            double all = Arrays.stream(counts).sum();
            double weight = Arrays.stream(weights).sum();
            double log =
                    Gamma.logGamma(all + 1) + Gamma.logGamma(weight) - Gamma.logGamma(all + weight);
            for (int k = 0; k < counts.length; k++) {
                log +=
                        Gamma.logGamma(counts[k] + weights[k])
                                - Gamma.logGamma(weights[k])
                                - Gamma.logGamma(counts[k] + 1);
            }
            found.add(log);
        }

        Largest.between(found, table.numbers("loglik")).isAtMost(1e-12);
    }

    private static double[] numbers(String joined) {
        return Arrays.stream(joined.split("-")).mapToDouble(Double::parseDouble).toArray();
    }
}
