package tamabako.insight.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Strand;

/// What is chosen, with two sections and drills of our own.
class ChoiceTest {

    private static final int FIVE = new Strand.OfMove(Move.ADD_FIVE_COMPLEMENT).index();
    private static final int TEN = new Strand.OfMove(Move.ADD_TEN_COMPLEMENT).index();

    private static Load load(double five, double ten) {
        List<Double> expected = new ArrayList<>(Collections.nCopies(Load.SIZE, 0.0));
        List<Double> times = new ArrayList<>(Collections.nCopies(Load.SIZE, 0.0));
        expected.set(FIVE, 0.01 * five);
        expected.set(TEN, 0.01 * ten);
        times.set(FIVE, five);
        times.set(TEN, ten);
        return new Load(expected, times, 30);
    }

    private static Exercise drill(Move move, String section, double five, double ten) {
        return new Exercise(new Focus.OfMove(move), section, load(five, ten));
    }

    private static Exercise exam(String section) {
        return new Exercise(new Focus.AsInExam(section), section, load(4, 4));
    }

    private static final List<Exercise> EXERCISES =
            List.of(
                    exam("columns"),
                    exam("products"),
                    drill(Move.ADD_FIVE_COMPLEMENT, "columns", 10, 2),
                    drill(Move.ADD_TEN_COMPLEMENT, "columns", 2, 10),
                    drill(Move.ADD_TEN_COMPLEMENT, "products", 2, 10));

    private static Choice choice(double columns, double products) {
        return new Choice(
                List.of(
                        new Need("columns", load(4, 4), columns),
                        new Need("products", load(4, 4), products)),
                Learning.USUAL,
                Choice.USUAL_EXAM_SHARE,
                Choice.USUAL_PUPILS);
    }

    private static double[] factors(double five, double ten) {
        double[] factors = new double[Load.SIZE];
        Arrays.fill(factors, 1);
        factors[FIVE] = five;
        factors[TEN] = ten;
        return factors;
    }

    private static long of(List<Exercise> chosen, Focus focus) {
        return chosen.stream().filter(one -> one.focus().equals(focus)).count();
    }

    @Test
    void aQuarterIsAsInTheExamAndNoFocusStandsTwiceRunning() {
        SplittableRandom random = new SplittableRandom(1);
        for (int count = 1; count <= 40; count++) {
            List<Exercise> chosen =
                    choice(1, 0.5)
                            .of(
                                    EXERCISES,
                                    count,
                                    () ->
                                            factors(
                                                    Math.exp(random.nextGaussian()),
                                                    Math.exp(random.nextGaussian())));

            assertThat(chosen).hasSize(count);
            assertThat(chosen.stream().filter(one -> one.focus().isAsInExam()).count())
                    .isGreaterThanOrEqualTo((long) Math.ceil(count / 4.0));
            for (int i = 1; i < count; i++) {
                assertThat(chosen.get(i).focus()).isNotEqualTo(chosen.get(i - 1).focus());
            }
        }
    }

    @Test
    void whatIsLackedIsDrilled() {
        List<Exercise> fives = choice(1, 0).of(EXERCISES, 20, () -> factors(6, 1));
        List<Exercise> tens = choice(1, 0).of(EXERCISES, 20, () -> factors(1, 6));
        Focus five = new Focus.OfMove(Move.ADD_FIVE_COMPLEMENT);
        Focus ten = new Focus.OfMove(Move.ADD_TEN_COMPLEMENT);

        assertThat(of(fives, five)).isGreaterThan(of(fives, ten));
        assertThat(of(tens, ten)).isGreaterThan(of(tens, five));
    }

    @Test
    void noDrillTakesMoreThanAThird() {
        List<Exercise> chosen = choice(1, 1).of(EXERCISES, 30, () -> factors(20, 1));

        assertThat(of(chosen, new Focus.OfMove(Move.ADD_FIVE_COMPLEMENT))).isLessThanOrEqualTo(10);
    }

    @Test
    void theSectionThatMattersMoreHasMore() {
        List<Exercise> chosen = choice(3, 1).of(EXERCISES, 24, () -> factors(1, 1));
        long columns = chosen.stream().filter(one -> one.section().equals("columns")).count();

        assertThat(columns).isBetween(14L, 19L);
    }

    @Test
    void practiceIsWorthWhatItTakesAway() {
        Choice choice = choice(1, 0);
        double[] even = factors(1, 1);
        double worth = choice.worth(EXERCISES.get(2), even);
        double gone = 0.5 * (1 - Math.exp(-0.02)) + 0.5 * (1 - Math.exp(-0.004));

        assertThat(worth).isCloseTo(gone / 30, within(1e-12));
    }
}
