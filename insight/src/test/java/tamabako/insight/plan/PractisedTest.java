package tamabako.insight.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import org.junit.jupiter.api.Test;

class PractisedTest {

    private static final Load LOAD =
            new Load(Collections.nCopies(Load.SIZE, 0.1), Collections.nCopies(Load.SIZE, 10.0), 30);

    private static double left(Practised practised) {
        return practised.left(new Learning(0.01))[0];
    }

    @Test
    void whatWasPractisedSinceTheAnswersGoesBetter() {
        Practised practised = new Practised();
        assertThat(left(practised)).isEqualTo(1);
        practised.add(LOAD);
        practised.add(LOAD);

        // The two answers stand before 0 and 10 times, and 20 times were met: 15 since the mean.
        assertThat(left(practised)).isCloseTo(Math.exp(-0.15), within(1e-12));
    }

    @Test
    void aTestTeachesNothing() {
        Practised practised = new Practised();
        practised.addWithoutLearning(LOAD);

        assertThat(left(practised)).isEqualTo(1);
    }

    @Test
    void inTheLongRunNoMoreIsCounted() {
        Practised practised = new Practised();
        for (int i = 0; i < 1_000; i++) {
            practised.add(LOAD);
        }

        assertThat(left(practised)).isCloseTo(Math.exp(-10), within(1e-12));
    }
}
