package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

/// The linear logistic test model of verbal aggression (mode, situation and behaviour) against eRm
/// and lme4.
class LinearLogisticTest {

    /// With a one in front where the mean is free too.
    static Features design(boolean constant) {
        List<List<Double>> rows = new ArrayList<>();
        for (Map<String, String> item : Table.read("verbagg-rasch").rows()) {
            List<Double> row = new ArrayList<>();
            if (constant) {
                row.add(1.0);
            }
            row.add("do".equals(item.get("mode")) ? 1.0 : 0.0);
            row.add("self".equals(item.get("situ")) ? 1.0 : 0.0);
            row.add("scold".equals(item.get("btype")) ? 1.0 : 0.0);
            row.add("shout".equals(item.get("btype")) ? 1.0 : 0.0);
            rows.add(row);
        }
        return Features.of(rows);
    }

    static Table expected(String model) {
        return Table.read("verbagg-lltm").where("model", model);
    }

    static double number(String model, String term) {
        return expected(model).where("term", term).number("est");
    }

    @Test
    void whoeverAnswered() {
        Table expected = expected("LLTM-CML(eRm)");

        Difficulties found =
                ConditionalRasch.by(design(false), RaschTest.verbalAggression()).orElseThrow();

        // Effects there make easier, here harder.
        Largest.between(
                        RaschTest.negated(RaschTest.values(found.effects())),
                        expected.numbers("est"))
                .isAtMost(2e-3);
        Largest.between(RaschTest.errors(found.effects()), expected.numbers("se")).isAtMost(2e-3);
        assertThat(found.logLikelihood()).isCloseTo(number("logLik", "LLTM-CML"), within(2e-3));
    }

    @Test
    void withNormalAbilities() {
        Table expected = expected("LLTM-MML-AGQ25(glmer)");

        MarginalRasch.Fit found =
                MarginalRasch.by(design(true), RaschTest.verbalAggression()).orElseThrow();

        List<Estimate> effects = found.difficulties().effects();
        Largest.between(RaschTest.negated(RaschTest.values(effects)), expected.numbers("est"))
                .isAtMost(2e-3);
        Largest.between(RaschTest.errors(effects), expected.numbers("se")).isAtMost(2e-3);
        assertThat(found.spread().value())
                .isCloseTo(number("sd_person", "LLTM-AGQ25"), within(2e-3));
        assertThat(found.difficulties().logLikelihood())
                .isCloseTo(number("logLik", "LLTM-AGQ25"), within(2e-3));
    }

    /// De Boeck and Wilson's example: four effects tell nearly nine tenths of what makes 24 items
    /// differ.
    @Test
    void fourEffectsTellMostOfTheDifficulties() {
        AnswerSums sums = RaschTest.verbalAggression();
        List<Double> each = MarginalRasch.each(sums).orElseThrow().difficulties().values();
        List<Double> by =
                MarginalRasch.by(design(true), sums).orElseThrow().difficulties().values();

        double correlation =
                new PearsonsCorrelation()
                        .correlation(
                                each.stream().mapToDouble(x -> x).toArray(),
                                by.stream().mapToDouble(x -> x).toArray());

        assertThat(correlation).isCloseTo(0.943, within(1e-3));
    }
}
