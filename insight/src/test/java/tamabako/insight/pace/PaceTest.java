package tamabako.insight.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.problems.Attempt;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Terms;
import tamabako.problems.Unreadable;
import tamabako.problems.effort.Effort;

class PaceTest {

    private static Column column(SplittableRandom chance) {
        int digits = chance.nextInt(2, 7);
        long least = Math.powExact(10L, digits - 1);
        List<BigDecimal> rows = new ArrayList<>();
        long total = 0;
        for (int i = 0; i < 14 - digits; i++) {
            long row = chance.nextLong(least, 10 * least);
            row = chance.nextInt(10) < 3 && total >= row ? -row : row;
            total += row;
            rows.add(BigDecimal.valueOf(row));
        }
        return new Column("1", rows, Terms.PLAIN);
    }

    private static Attempt attempt(Problem problem, double seconds) {
        return new Attempt(
                problem,
                problem.answer().value().toPlainString(),
                OptionalDouble.of(seconds),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    private static PaceAnswer answer(Problem problem, double seconds) {
        return PaceAnswer.of(attempt(problem, seconds)).orElseThrow();
    }

    /// A pupil who takes `times` times as long as usual, and again `more` times for one part.
    private static PaceTally tally(int problems, double times, Part part, double more, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        PaceTally tally = new PaceTally();
        for (int i = 0; i < problems; i++) {
            Column column = column(chance);
            WorkParts parts = WorkParts.of(column);
            double seconds = (more - 1) * parts.seconds(part);
            for (Part each : Part.values()) {
                seconds += parts.seconds(each);
            }
            double noise = Math.exp(0.15 * chance.nextGaussian());
            tally.add(answer(column, times * seconds * noise));
        }
        return tally;
    }

    private static PartPace of(PupilPace pace, Part part) {
        return pace.parts().stream().filter(told -> told.part() == part).findFirst().orElseThrow();
    }

    @Test
    void thePartsOfAProblemAreItsWholeEffort() {
        forSeeds(
                200,
                draw -> {
                    SplittableRandom chance = new SplittableRandom(draw.bits());
                    Problem problem =
                            switch (chance.nextInt(3)) {
                                case 0 -> column(chance);
                                case 1 ->
                                        new Product(
                                                "1",
                                                BigDecimal.valueOf(chance.nextInt(12, 9_000)),
                                                BigDecimal.valueOf(chance.nextInt(2, 900)),
                                                Terms.PLAIN);
                                default ->
                                        new Quotient(
                                                "1",
                                                BigDecimal.valueOf(chance.nextInt(1_000, 90_000)),
                                                BigDecimal.valueOf(chance.nextInt(2, 90)),
                                                Terms.PLAIN);
                            };
                    WorkParts parts = WorkParts.of(problem);
                    Effort effort = Effort.of(problem);
                    double seconds = 0;
                    int steps = 0;
                    for (Part part : Part.values()) {
                        seconds += parts.seconds(part);
                        steps += parts.steps(part);
                        assertThat(parts.seconds(part)).isNotNegative();
                    }

                    assertThat(seconds).isCloseTo(effort.seconds(), within(1e-9));
                    assertThat(steps).isEqualTo(effort.steps());
                    assertThat(parts.strokes()).isEqualTo(effort.strokes());
                });
    }

    @Test
    void theStepsOfAColumnAreThoseThatTheSlipFinderCounts() {
        forSeeds(
                100,
                draw -> {
                    Column column = column(new SplittableRandom(draw.bits()));
                    EventTable table = EventTable.of(column);
                    WorkParts parts = WorkParts.of(column);

                    for (Move move : Move.values()) {
                        assertThat(parts.steps(Part.of(move)))
                                .as(move.word())
                                .isEqualTo(table.steps(move));
                    }
                });
    }

    @Test
    void aPupilWhoTakesTwiceAsLongIsToldSo() {
        int within = 0;
        for (int seed = 0; seed < 40; seed++) {
            PupilPace pace = tally(40, 2, Part.TABLE, 1, seed).told(PacePopulation.shipped());

            assertThat(pace.altogether().times()).isCloseTo(2, within(0.2));
            assertThat(pace.noise()).isBetween(0.1, 0.25);
            boolean low = pace.altogether().low() < 2;
            within += low && pace.altogether().high() > 2 ? 1 : 0;
        }
        // Nine in ten should; of 40 pupils 30 and fewer would be hardly chance (.004).
        assertThat(within).isGreaterThan(30);
    }

    @Test
    void theSlowMoveIsTheOneThatStandsOut() {
        for (Part slow : List.of(Part.ADD_DIRECT, Part.ADD_TEN_COMPLEMENT)) {
            PupilPace pace = tally(300, 1, slow, 2.5, 4).told(PacePopulation.shipped());

            assertThat(of(pace, slow).besideLow()).isGreaterThan(1);
            assertThat(pace.parts())
                    .filteredOn(part -> part.besideLow() > 1)
                    .extracting(PartPace::part)
                    .containsExactly(slow);
        }
    }

    @Test
    void aPauseInOneTimeDoesLittleHarm() {
        PaceTally calm = tally(30, 1, Part.TABLE, 1, 7);
        PaceTally paused = tally(30, 1, Part.TABLE, 1, 7);
        Column column = column(new SplittableRandom(9));
        paused.add(answer(column, 20 * Effort.of(column).seconds()));
        double before = calm.told(PacePopulation.shipped()).altogether().times();
        double after = paused.told(PacePopulation.shipped()).altogether().times();

        // By the plain mean one of 31 times that is twentyfold raises all by a tenth.
        assertThat(after / before).isBetween(1.0, 1.03);
    }

    @Test
    void furtherTimesFallWithinWhatIsExpected() {
        PupilPace pace =
                tally(60, 1.4, Part.ADD_TEN_WITH_FIVE, 1.3, 3).told(PacePopulation.shipped());
        SplittableRandom chance = new SplittableRandom(77);
        int within = 0;
        int all = 400;
        for (int i = 0; i < all; i++) {
            Column column = column(chance);
            WorkParts parts = WorkParts.of(column);
            double seconds =
                    1.4
                            * (Effort.of(column).seconds()
                                    + 0.3 * parts.seconds(Part.ADD_TEN_WITH_FIVE))
                            * Math.exp(0.15 * chance.nextGaussian());
            LogSeconds expected = pace.expect(column);
            within +=
                    Math.abs(Math.log(seconds) - expected.mean()) < 1.6449 * expected.deviation()
                            ? 1
                            : 0;
        }

        assertThat((double) within / all).isBetween(0.86, 0.96);
    }

    @Test
    void pupilsInGeneralAreLearnedFromTheirTimes() {
        List<PaceTally> pupils = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            pupils.add(tally(40, 1.5, Part.TABLE, 1, i));
        }
        PacePopulation learned = PacePopulation.shipped().learnedFrom(pupils);

        PupilPace.Altogether one = pupils.getFirst().told(learned).altogether();
        assertThat(one.times()).isCloseTo(1, within(0.05));
        assertThat(learned.speed()).isLessThan(PacePopulation.shipped().speed());
        Column column = column(new SplittableRandom(5));
        assertThat(new PaceTally().told(learned).expect(column).seconds())
                .isCloseTo(
                        1.5 * Effort.of(column).seconds(),
                        within(0.1 * Effort.of(column).seconds()));
    }

    @Test
    void withoutTimesNothingIsToldButWhatPupilsInGeneralTake() {
        PupilPace pace = new PaceTally().told(PacePopulation.shipped());
        Column column = column(new SplittableRandom(1));

        assertThat(pace.isEnough()).isFalse();
        assertThat(pace.parts()).noneMatch(PartPace::told);
        assertThat(pace.expect(column).seconds())
                .isCloseTo(Effort.of(column).seconds(), within(1e-6));
        assertThat(PaceJson.of(pace).has("times")).isFalse();
    }

    @Test
    void aTimeThatNoHandNeedsIsNamed() {
        Column column = column(new SplittableRandom(1));
        int strokes = WorkParts.of(column).strokes();

        assertThatThrownBy(() -> PaceAnswer.of(attempt(column, strokes / 20.0 - 0.01)))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("seconds: ")
                .hasMessageContaining(strokes + " strokes");
        assertThat(PaceAnswer.of(attempt(column, strokes / 20.0 + 0.01))).isPresent();
        assertThatThrownBy(() -> PaceAnswer.of(attempt(column, 0))).isInstanceOf(Unreadable.class);
        assertThat(PaceAnswer.of(Attempt.of(column, "1"))).isEmpty();
    }
}
