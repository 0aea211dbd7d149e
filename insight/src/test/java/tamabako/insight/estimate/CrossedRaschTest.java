package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.insight.estimate.LinearLogisticTest.design;
import static tamabako.insight.estimate.LinearLogisticTest.expected;
import static tamabako.insight.estimate.LinearLogisticTest.number;

import java.util.List;
import org.junit.jupiter.api.Test;

/// Laplace's approximation for verbal aggression against lme4's.
///
/// lme4 stops its inner steps early: its log likelihoods are up to .006 too low without errors of
/// items. The closer ones here are its own with `glmerControl(tolPwrss = 1e-12)`.
class CrossedRaschTest {

    private static void isAsExpected(CrossedRasch.Fit found, Table effects) {
        Largest.between(
                        RaschTest.negated(RaschTest.values(found.effects())),
                        effects.numbers("est"))
                .isAtMost(2e-3);
        Largest.between(RaschTest.errors(found.effects()), effects.numbers("se")).isAtMost(2e-3);
    }

    @Test
    void whereFeaturesAreTakenToTellAll() {
        CrossedRasch.Fit found =
                CrossedRasch.withoutError(design(true), RaschTest.verbalAggression()).orElseThrow();

        isAsExpected(found, expected("LLTM-MML-Laplace(glmer)"));
        assertThat(found.logLikelihood()).isCloseTo(number("logLik", "LLTM-Laplace"), within(7e-3));
        assertThat(found.logLikelihood()).isCloseTo(-4118.96114146, within(1e-6));
        Largest.between(
                        RaschTest.negated(RaschTest.values(found.effects())),
                        List.of(
                                1.7443040497,
                                -0.6717929669,
                                -1.0282294557,
                                -1.0555564514,
                                -2.0429553638))
                .isAtMost(1e-5);
        assertThat(found.ability()).isCloseTo(number("sd_person", "LLTM-Laplace"), within(2e-3));
        assertThat(found.beside()).containsOnly(0.0);
    }

    @Test
    void whereEachItemHasAnErrorOfItsOwn() {
        CrossedRasch.Fit found =
                CrossedRasch.by(design(true), RaschTest.verbalAggression()).orElseThrow();

        isAsExpected(found, expected("LLTM+item-error-Laplace(glmer)"));
        assertThat(found.logLikelihood())
                .isCloseTo(number("logLik", "LLTM+item-error-Laplace"), within(2e-3));
        assertThat(found.ability())
                .isCloseTo(number("sd_person", "LLTM+item-error person"), within(2e-3));
        assertThat(found.error())
                .isCloseTo(number("sd_person", "LLTM+item-error item"), within(2e-3));
    }

    @Test
    void whereEachItemIsLikeNoOther() {
        CrossedRasch.Fit found =
                CrossedRasch.withoutError(Features.own(24), RaschTest.verbalAggression())
                        .orElseThrow();

        assertThat(found.ability()).isCloseTo(number("sd_person", "Rasch-Laplace"), within(2e-3));
        assertThat(found.logLikelihood())
                .isCloseTo(number("logLik", "Rasch-Laplace"), within(7e-3));
        assertThat(found.logLikelihood()).isCloseTo(-4039.24853708, within(1e-6));
    }

    /// What is beside the features makes the errors of their effects twice as large, and more.
    @Test
    void errorsAreLargerWhereFeaturesDoNotTellAll() {
        AnswerSums sums = RaschTest.verbalAggression();
        List<Double> all =
                RaschTest.errors(
                        CrossedRasch.withoutError(design(true), sums).orElseThrow().effects());
        List<Double> some =
                RaschTest.errors(CrossedRasch.by(design(true), sums).orElseThrow().effects());

        for (int i = 1; i < all.size(); i++) {
            assertThat(some.get(i)).isGreaterThan(2 * all.get(i));
        }
    }
}
