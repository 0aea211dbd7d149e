package tamabako.insight.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// What is written of an answer by a pupil who often writes a figure too many or too few.
class PencilTest {

    private static List<Long> written(long answer) {
        Rates often = Rates.shipped().with(SlipKind.WRITTEN_LENGTH, 0.9);
        SplittableRandom chance = new SplittableRandom(3);
        return Stream.generate(() -> new Pencil(Fate.by(often, chance, Habit.NONE)).writes(answer))
                .limit(200)
                .toList();
    }

    @Test
    void aZeroTooManyIsWrittenWhereItFits() {
        assertThat(written(1_234)).contains(1_234L, 12_340L, 123L);
        assertThat(written(-1_234)).contains(-1_234L, -12_340L, -123L);
    }

    @Test
    void whatWouldBeTooLongIsWrittenAsItStands() {
        assertThat(written(Long.MAX_VALUE))
                .contains(Long.MAX_VALUE)
                .allSatisfy(one -> assertThat(one).isPositive());
    }
}
