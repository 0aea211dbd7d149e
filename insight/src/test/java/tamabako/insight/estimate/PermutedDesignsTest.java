package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.insight.estimate.LinearLogisticTest.design;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/// Features that tell something, and features that do not.
class PermutedDesignsTest {

    @Test
    void whatVerbalAggressionIsMadeOfTellsMoreThanChance() {
        PermutedDesigns found =
                PermutedDesigns.of(design(false), RaschTest.verbalAggression(), 1000, 1)
                        .orElseThrow();

        assertThat(found.correlation()).isCloseTo(0.942, within(1e-3));
        assertThat(found.byChance()).hasSize(1000);
        assertThat(found.share()).isCloseTo(1 / 1001.0, within(1e-12));
        // By chance, four of 23 directions hold 4/23 of the variance.
        double median = found.byChance().get(500);
        assertThat(median * median).isCloseTo(4 / 23.0, within(0.05));
    }

    @Test
    void whatIsDrawnAtRandomSeldomDoes() {
        AnswerSums sums = RaschTest.verbalAggression();
        SplittableRandom chance = new SplittableRandom(3);
        int told = 0;
        for (int time = 0; time < 20; time++) {
            List<List<Double>> rows = new ArrayList<>();
            for (int i = 0; i < sums.problems(); i++) {
                rows.add(List.of(chance.nextGaussian(), chance.nextGaussian()));
            }
            PermutedDesigns found =
                    PermutedDesigns.of(Features.of(rows), sums, 40, time).orElseThrow();
            told += found.share() <= 0.05 ? 1 : 0;
        }

        // One in twenty is expected; more than four would come in 3 of 1,000 such tests.
        assertThat(told).isLessThanOrEqualTo(4);
    }

    @Test
    void theSameSeedGivesTheSame() {
        AnswerSums sums = RaschTest.verbalAggression();

        assertThat(PermutedDesigns.of(design(false), sums, 5, 9))
                .isEqualTo(PermutedDesigns.of(design(false), sums, 5, 9));
    }
}
