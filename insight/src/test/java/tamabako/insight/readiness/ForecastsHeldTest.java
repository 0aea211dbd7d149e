package tamabako.insight.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/// How well forecasts held: what is told, and what is not told below the evidence it needs.
class ForecastsHeldTest {

    /// So many exams of which that chance was told, so many of them passed.
    private static List<Recalibration.Outcome> exams(double told, int exams, int passed) {
        List<Recalibration.Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < exams; i++) {
            outcomes.add(new Recalibration.Outcome(told, i < passed));
        }
        return outcomes;
    }

    private static ForecastsHeld both(
            List<Recalibration.Outcome> one, List<Recalibration.Outcome> other) {
        List<Recalibration.Outcome> all = new ArrayList<>(one);
        all.addAll(other);
        return new ForecastsHeld(all);
    }

    @Test
    void belowTenExamsNoFigureIsTold() {
        ForecastsHeld held = new ForecastsHeld(exams(0.7, 9, 9));

        assertThat(held.isTold()).isFalse();
        assertThat(held.groups()).isEmpty();
        for (Locale language : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            assertThat(HeldWords.of(language).say(held)).hasSize(1);
            assertThat(HeldWords.of(language).say(held).getFirst()).contains("9").contains("10");
        }
        assertThat(HeldJson.of(held).at("/forecasts/needs").asInt()).isEqualTo(1);
        assertThat(HeldJson.of(held).at("/forecasts/passed").isMissingNode()).isTrue();
    }

    @Test
    void asManyAsForetoldIsAsTold() {
        ForecastsHeld held = both(exams(0.7, 20, 14), exams(0.2, 10, 2));

        assertThat(held.foretold()).isCloseTo(16, within(1e-9));
        assertThat(held.passed()).isEqualTo(16);
        assertThat(held.verdict()).isEqualTo(ForecastsHeld.Verdict.AS_TOLD);
        assertThat(held.groups())
                .extracting(ForecastsHeld.Group::exams, ForecastsHeld.Group::passed)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(10, 2),
                        org.assertj.core.groups.Tuple.tuple(10, 10),
                        org.assertj.core.groups.Tuple.tuple(10, 4));
        assertThat(HeldWords.of(Locale.ENGLISH).say(held).getFirst())
                .isEqualTo(
                        "Of 30 exams, about 16 should have been passed by what was foretold; 16"
                                + " were.");
    }

    @Test
    void farFewerOrMoreThanForetoldIsNamed() {
        assertThat(new ForecastsHeld(exams(0.7, 30, 14)).verdict())
                .isEqualTo(ForecastsHeld.Verdict.TOLD_TOO_HIGH);
        assertThat(new ForecastsHeld(exams(0.3, 30, 16)).verdict())
                .isEqualTo(ForecastsHeld.Verdict.TOLD_TOO_LOW);
        assertThat(new ForecastsHeld(exams(0.7, 30, 18)).verdict())
                .isEqualTo(ForecastsHeld.Verdict.AS_TOLD);
    }

    @Test
    void rightForecastsAreSeldomBlamed() {
        SplittableRandom random = new SplittableRandom(11);
        int blamed = 0;
        for (int i = 0; i < 2_000; i++) {
            List<Recalibration.Outcome> outcomes = new ArrayList<>();
            for (int exam = 0; exam < 40; exam++) {
                double told = random.nextDouble();
                outcomes.add(new Recalibration.Outcome(told, random.nextDouble() < told));
            }
            blamed +=
                    new ForecastsHeld(outcomes).verdict() == ForecastsHeld.Verdict.AS_TOLD ? 0 : 1;
        }
        assertThat(blamed).isBetween(60, 200);
    }

    @Test
    void fromFiftyExamsOnTheChancesAreCorrected() {
        ForecastsHeld few = both(exams(0.8, 25, 12), exams(0.4, 24, 6));
        ForecastsHeld enough = both(exams(0.8, 25, 12), exams(0.4, 25, 6));

        assertThat(few.correction()).isEqualTo(Recalibration.NONE);
        assertThat(enough.correction().of(0.8)).isLessThan(0.7);
        assertThat(HeldJson.of(few).at("/forecasts/correction").isMissingNode()).isTrue();
        assertThat(HeldJson.of(enough).at("/forecasts/correction/slope").asDouble()).isPositive();
        assertThat(HeldWords.of(Locale.JAPANESE).say(enough).getLast()).contains("50件");
    }
}
