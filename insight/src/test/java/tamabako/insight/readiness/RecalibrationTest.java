package tamabako.insight.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tamabako.insight.readiness.Recalibration.Outcome;

class RecalibrationTest {

    /// Told twice as boldly as it is, and too hopeful.
    private static List<Outcome> outcomes(int count) {
        SplittableRandom random = new SplittableRandom(3);
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double odds = 2 * random.nextGaussian();
            double told = 1 / (1 + Math.exp(-odds));
            double real = 1 / (1 + Math.exp(-(0.6 * odds - 0.4)));
            outcomes.add(new Outcome(told, random.nextDouble() < real));
        }
        return outcomes;
    }

    @Test
    void belowFiftyExamsNothingIsCorrected() {
        assertThat(Recalibration.learnedFrom(outcomes(49))).isEqualTo(Recalibration.NONE);
        assertThat(Recalibration.NONE.of(0.3)).isEqualTo(0.3);
    }

    @Test
    void fromManyExamsTheBoldnessIsLearned() {
        Recalibration learned = Recalibration.learnedFrom(outcomes(5_000));

        assertThat(learned.slope()).isCloseTo(0.6, within(0.06));
        assertThat(learned.shift()).isCloseTo(-0.4, within(0.1));
        assertThat(learned.of(0.5)).isCloseTo(0.4, within(0.03));
    }

    @Test
    void fromFewExamsTheSlopeStaysNearOne() {
        double few = Recalibration.learnedFrom(outcomes(60)).slope();

        assertThat(few).isBetween(0.6, 1.0);
    }

    /// At the maximum the gradient of what is maximised is nothing.
    @Test
    void whatIsLearnedIsTheLikeliest() {
        List<Outcome> outcomes = outcomes(200);
        Recalibration learned = Recalibration.learnedFrom(outcomes);
        double best = logChance(outcomes, learned);

        for (double off : new double[] {-0.01, 0.01}) {
            assertThat(
                            logChance(
                                    outcomes,
                                    new Recalibration(learned.shift() + off, learned.slope())))
                    .isLessThan(best);
            assertThat(
                            logChance(
                                    outcomes,
                                    new Recalibration(learned.shift(), learned.slope() + off)))
                    .isLessThan(best);
        }
    }

    private static double logChance(List<Outcome> outcomes, Recalibration correction) {
        double sum =
                -Math.pow(correction.shift() / 0.5, 2) / 2
                        - Math.pow((correction.slope() - 1) / 0.2, 2) / 2;
        for (Outcome outcome : outcomes) {
            double chance = correction.of(outcome.told());
            sum += Math.log(outcome.passed() ? chance : 1 - chance);
        }
        return sum;
    }
}
