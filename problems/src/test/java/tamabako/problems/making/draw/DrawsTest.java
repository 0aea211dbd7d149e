package tamabako.problems.making.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/// The stream is the JDK's SplittableRandom before any split, which is SplitMix64 too.
class DrawsTest {

    @Test
    void bitsAreThoseOfSplitMix() {
        for (long seed : new long[] {0, 1, 42, -7, Long.MAX_VALUE}) {
            Draws draws = new Draws(seed);
            SplittableRandom reference = new SplittableRandom(seed);
            for (int i = 0; i < 100; i++) {
                assertThat(draws.bits()).isEqualTo(reference.nextLong());
            }
        }
    }

    @Test
    void everyNumberInARangeIsDrawnAboutEquallyOften() {
        Draws draws = new Draws(1);
        int[] drawn = new int[7];
        for (int i = 0; i < 70_000; i++) {
            drawn[(int) draws.between(3, 9) - 3]++;
        }
        for (int times : drawn) {
            // Five standard deviations of a count with chance 1/7.
            assertThat(times).isBetween(9_537, 10_463);
        }
    }

    @Test
    void numbersBelowALargeBoundStayBelowIt() {
        Draws draws = new Draws(2);
        long bound = (1L << 62) + 1;
        boolean upperHalf = false;
        for (int i = 0; i < 1000; i++) {
            long number = draws.below(bound);
            assertThat(number).isBetween(0L, bound - 1);
            upperHalf |= number > bound / 2;
        }
        assertThat(upperHalf).isTrue();
    }

    @Test
    void partsLieBetweenZeroAndOne() {
        Draws draws = new Draws(3);
        for (int i = 0; i < 1000; i++) {
            assertThat(draws.part()).isGreaterThanOrEqualTo(0).isLessThan(1);
        }
    }

    @Test
    void numbersPickedBelowALargeBoundAreEven() {
        Draws draws = new Draws(4);
        // Three of these fill the 64 bits but for a quarter: what falls into that is drawn again.
        long bound = 3L << 61;
        int[] thirds = new int[3];
        for (int i = 0; i < 30_000; i++) {
            thirds[(int) (draws.pick(bound) >>> 61)]++;
        }
        for (int times : thirds) {
            // Five standard deviations of a count with chance 1/3.
            assertThat(times).isBetween(9_592, 10_408);
        }
        assertThat(draws.pick(1L)).isZero();
    }
}
