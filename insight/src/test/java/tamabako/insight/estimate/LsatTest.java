package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.hipparchus.linear.ArrayRealVector;
import org.junit.jupiter.api.Test;
import tamabako.insight.estimate.NormalNodes.Node;

/// Sections 6 and 7 of the Law School Admission Test, as Bock and Lieberman gave them.
class LsatTest {

    private static final List<String> SECTIONS = List.of("lsat6", "lsat7");
    private static final int ITEMS = 5;

    private static AnswerSums sums(String section) {
        Table patterns = Table.read("lsat-patterns");
        List<Integer> right = new ArrayList<>(Collections.nCopies(ITEMS, 0));
        List<Integer> persons = new ArrayList<>(Collections.nCopies(ITEMS + 1, 0));
        for (int i = 0; i < patterns.rows().size(); i++) {
            String pattern = patterns.words("pattern").get(i);
            int times = patterns.wholes(section).get(i);
            int score = 0;
            for (int item = 0; item < ITEMS; item++) {
                if (pattern.charAt(item) == '1') {
                    right.set(item, right.get(item) + times);
                    score++;
                }
            }
            persons.set(score, persons.get(score) + times);
        }
        return new AnswerSums(right, persons);
    }

    private static Table expected(String section, String model) {
        return Table.read("lsat").where("data", section).where("model", model);
    }

    private static Table starting(Table table, String letter) {
        return table.where(row -> row.getOrDefault("par", "").matches(letter + "\\d*"));
    }

    @Test
    void withOneSteepnessForAllItems() {
        for (String section : SECTIONS) {
            Table expected = expected(section, "1PL-MML-GH61");

            MarginalRasch.Fit found = MarginalRasch.each(sums(section)).orElseThrow();

            List<Estimate> problems = found.difficulties().problems();
            Table easiness = starting(expected, "d");
            Largest.between(RaschTest.negated(RaschTest.values(problems)), easiness.numbers("est"))
                    .isAtMost(1e-3);
            Largest.between(RaschTest.errors(problems), easiness.numbers("se")).isAtMost(1e-3);
            Table steepness = expected.where("par", "a");
            assertThat(found.spread().value()).isCloseTo(steepness.number("est"), within(1e-3));
            assertThat(found.spread().standardError())
                    .isCloseTo(steepness.number("se"), within(1e-3));
            assertThat(found.difficulties().logLikelihood())
                    .isCloseTo(expected.where("par", "logLik").number("est"), within(1e-3));
            List<Double> onTheScaleOfOne =
                    problems.stream().map(d -> d.value() / found.spread().value()).toList();
            Largest.between(
                            onTheScaleOfOne,
                            expected(section, "1PL-MML difficulty b=-d/a").numbers("est"))
                    .isAtMost(1e-3);
        }
    }

    @Test
    void whoeverSatThem() {
        for (String section : SECTIONS) {
            Table expected = expected(section, "Rasch-CML-sum0");

            Difficulties found = ConditionalRasch.each(sums(section)).orElseThrow();

            Table difficulties = starting(expected, "b");
            Largest.between(found.values(), difficulties.numbers("est")).isAtMost(1e-3);
            Largest.between(RaschTest.errors(found.problems()), difficulties.numbers("se"))
                    .isAtMost(1e-3);
            assertThat(found.logLikelihood())
                    .isCloseTo(expected.where("par", "logLik").number("est"), within(1e-3));
        }
    }

    /// No judgement here needs a steepness of each item, so the model stands in the test; the
    /// nodes, the derivatives and the climb are those of the other models.
    @Test
    void withASteepnessOfEachItem() {
        for (String section : SECTIONS) {
            Table expected = expected(section, "2PL-MML-GH61");
            ArrayRealVector start = new ArrayRealVector(2 * ITEMS, 0.8);

            Peak found = Newton.climb(twoParameters(section).curve(), start).orElseThrow();

            Table parameters = starting(expected, "[ad]");
            Largest.between(RaschTest.values(found.estimates()), parameters.numbers("est"))
                    .isAtMost(5e-3);
            Largest.between(RaschTest.errors(found.estimates()), parameters.numbers("se"))
                    .isAtMost(5e-3);
            assertThat(found.height())
                    .isCloseTo(expected.where("par", "logLik").number("est"), within(1e-3));
            List<Double> difficulties = new ArrayList<>();
            for (int i = 0; i < ITEMS; i++) {
                difficulties.add(-found.point().getEntry(ITEMS + i) / found.point().getEntry(i));
            }
            Largest.between(
                            difficulties,
                            expected(section, "2PL-MML difficulty b=-d/a").numbers("est"))
                    .isAtMost(5e-3);
        }
    }

    /// Steepnesses first, then easinesses.
    private static Likelihood twoParameters(String section) {
        Table patterns = Table.read("lsat-patterns");
        List<Node> nodes = NormalNodes.of(61);
        return unknown -> {
            DerivativeStructure log = unknown.getFirst().getField().getZero();
            for (int i = 0; i < patterns.rows().size(); i++) {
                String pattern = patterns.words("pattern").get(i);
                List<DerivativeStructure> chances = new ArrayList<>();
                for (Node node : nodes) {
                    DerivativeStructure chance =
                            log.getField().getZero().add(Math.log(node.share()));
                    for (int item = 0; item < ITEMS; item++) {
                        DerivativeStructure logit =
                                unknown.get(item)
                                        .multiply(node.at())
                                        .add(unknown.get(ITEMS + item));
                        boolean right = pattern.charAt(item) == '1';
                        chance = chance.subtract(Logits.softplus(right ? logit.negate() : logit));
                    }
                    chances.add(chance);
                }
                log = log.add(Logits.logSum(chances).multiply(patterns.wholes(section).get(i)));
            }
            return log;
        };
    }
}
