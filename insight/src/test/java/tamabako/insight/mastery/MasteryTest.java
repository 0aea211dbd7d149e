package tamabako.insight.mastery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tamabako.insight.pooling.Manner;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;
import tamabako.problems.Attempt;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Terms;

/// Pupils are simulated bead by bead; what is told of them sees only what they write.
class MasteryTest {

    private static final Rates USUAL = Rates.shipped();
    private static final MasteryPopulation PUPILS = MasteryPopulation.shipped();

    private static List<BigDecimal> rows(SplittableRandom chance) {
        List<BigDecimal> rows = new ArrayList<>();
        long total = 0;
        for (int i = 0; i < 10; i++) {
            long row = chance.nextLong(10_000, 100_000);
            row = chance.nextInt(10) < 3 && total >= row ? -row : row;
            total += row;
            rows.add(BigDecimal.valueOf(row));
        }
        return rows;
    }

    private static Attempt works(Rates rates, SplittableRandom chance) {
        while (true) {
            List<BigDecimal> rows = rows(chance);
            List<Long> whole = rows.stream().map(BigDecimal::longValueExact).toList();
            OptionalLong written = ColumnPupil.writes(whole, Fate.by(rates, chance, Habit.NONE));
            if (written.isPresent()) {
                Column column = new Column("1", rows, Terms.PLAIN);
                return Attempt.of(column, Long.toString(written.getAsLong()));
            }
        }
    }

    private static MasteryTally tally(Rates rates, int problems, SplittableRandom chance) {
        MasteryTally tally = new MasteryTally(Manner.FRAME);
        for (int i = 0; i < problems; i++) {
            tally.add(answer(works(rates, chance), OptionalLong.empty()));
        }
        return tally;
    }

    private static MasteryAnswer answer(Attempt attempt, OptionalLong day) {
        MasteryAnswer answer =
                MasteryAnswer.of(EventTable.of(attempt.problem()), attempt).orElseThrow();
        return new MasteryAnswer(answer.kind(), answer.evidence(), day);
    }

    private static PupilMastery told(MasteryTally tally) {
        return tally.told(PUPILS, Demand.of(tally));
    }

    private static MoveMastery of(PupilMastery mastery, Move move) {
        return mastery.moves().stream()
                .filter(told -> told.move() == move)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void ofAPupilWhoHasShownNothingNothingIsSaid() {
        PupilMastery mastery = told(new MasteryTally(Manner.FRAME));

        assertThat(mastery.moves()).hasSize(9);
        assertThat(mastery.moves())
                .allSatisfy(
                        move -> assertThat(move.statement()).isEqualTo(Statement.NEEDS_EVIDENCE));
        assertThat(mastery.kinds()).isEmpty();
        assertThat(mastery.weakest()).isEmpty();
    }

    @Test
    void afterAFewRightAnswersNothingIsSaidButHowManyMoreAreNeeded() {
        SplittableRandom chance = new SplittableRandom(5);
        MasteryTally tally = new MasteryTally(Manner.FRAME);
        for (int i = 0; i < 8; i++) {
            Column column = new Column("1", rows(chance), Terms.PLAIN);
            String right = column.answer().value().toPlainString();
            tally.add(answer(Attempt.of(column, right), OptionalLong.empty()));
        }
        PupilMastery mastery = told(tally);

        assertThat(mastery.moves())
                .allSatisfy(move -> {
                    assertThat(move.statement()).isEqualTo(Statement.NEEDS_EVIDENCE);
                    assertThat(move.problemsNeeded()).isPresent();
                });
        assertThat(mastery.kinds())
                .singleElement()
                .satisfies(
                        kind -> assertThat(kind.statement()).isEqualTo(Statement.NEEDS_EVIDENCE));
    }

    @Test
    void aThousandRightAnswersAreMastery() {
        SplittableRandom chance = new SplittableRandom(6);
        MasteryTally tally = new MasteryTally(Manner.FRAME);
        for (int i = 0; i < 1_000; i++) {
            Column column = new Column("1", rows(chance), Terms.PLAIN);
            String right = column.answer().value().toPlainString();
            tally.add(answer(Attempt.of(column, right), OptionalLong.empty()));
        }
        PupilMastery mastery = told(tally);

        assertThat(mastery.moves())
                .allSatisfy(move -> {
                    assertThat(move.statement()).isEqualTo(Statement.MASTERED);
                    assertThat(move.rate()).isLessThan(move.usual() / 2);
                    assertThat(move.slips()).isZero();
                });
        assertThat(mastery.kinds().getFirst().statement()).isEqualTo(Statement.MASTERED);
    }

    @Test
    void theMoveInWhichAPupilSlipsTenTimesAsOftenIsTheWeakestAndNotYetMastered() {
        for (Move move : List.of(Move.ADD_TEN_WITH_FIVE, Move.TAKE_TEN_COMPLEMENT)) {
            MasteryTally tally = tally(USUAL.with(move, 10), 300, new SplittableRandom(11));
            PupilMastery mastery = told(tally);

            assertThat(mastery.weakest().orElseThrow().move()).isEqualTo(move);
            assertThat(of(mastery, move).statement()).isEqualTo(Statement.NOT_YET);
            assertThat(of(mastery, move).rate()).isGreaterThan(3 * of(mastery, move).usual());
        }
    }

    @Test
    void ofTheUsualPupilTheUsualRateIsNeverFarAway() {
        int outside = 0;
        for (int seed = 0; seed < 20; seed++) {
            MasteryTally tally = tally(USUAL, 60, new SplittableRandom(seed));
            for (MoveMastery move : told(tally).moves()) {
                outside += move.usual() < move.low() || move.usual() > move.high() ? 1 : 0;
            }
        }
        // Usual pupils lie in the middle of all, so hardly one interval in a hundred leaves them
        // out; of 180 it is two at most here.
        assertThat(outside).isLessThanOrEqualTo(2);
    }

    @Test
    void theEstimateIsTheLikeliestUnderThePopulation() {
        MasteryTally tally = tally(USUAL.with(Move.ADD_DIRECT, 6), 80, new SplittableRandom(3));
        SlipPosterior posterior = told(tally).posterior();

        // With as many slips as were made the rate would be slips to expected; it is drawn toward
        // the usual one, never past it.
        for (Move move : Move.values()) {
            Strand strand = new Strand.OfMove(move);
            double plain = posterior.slips(strand) / posterior.expected(strand);
            double factor = posterior.factor(strand);
            assertThat(factor)
                    .as(move.word())
                    .isBetween(0.6 * Math.min(plain, 1), 1.7 * Math.max(plain, 1));
        }
    }

    @Test
    void oldAnswersCountLess() {
        SplittableRandom chance = new SplittableRandom(8);
        MasteryTally longAgo = new MasteryTally(Manner.FRAME);
        MasteryTally lately = new MasteryTally(Manner.FRAME);
        Rates weak = USUAL.with(Move.ADD_TEN_COMPLEMENT, 8);
        for (int i = 0; i < 100; i++) {
            Attempt attempt = works(weak, chance);
            longAgo.add(answer(attempt, OptionalLong.of(0)));
            lately.add(answer(attempt, OptionalLong.of(200)));
        }
        PupilMastery then = longAgo.told(PUPILS, Demand.of(longAgo), 200);
        PupilMastery now = lately.told(PUPILS, Demand.of(lately), 200);

        MoveMastery old = of(then, Move.ADD_TEN_COMPLEMENT);
        MoveMastery fresh = of(now, Move.ADD_TEN_COMPLEMENT);
        Strand strand = new Strand.OfMove(Move.ADD_TEN_COMPLEMENT);
        assertThat(then.posterior().expected(strand))
                .isCloseTo(now.posterior().expected(strand) * Math.pow(0.985, 200), within(1e-9));
        assertThat(old.slips()).isLessThan(fresh.slips() / 5);
        assertThat(old.rate()).isBetween(old.usual(), fresh.rate());
        assertThat(old.high() / old.low()).isGreaterThan(fresh.high() / fresh.low());
    }

    @Test
    void pupilsInGeneralAreLearnedFromTheirAnswersAlone() {
        SplittableRandom chance = new SplittableRandom(21);
        List<MasteryTally> pupils = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            pupils.add(tally(USUAL.with(Move.TAKE_TEN_COMPLEMENT, 4), 60, chance.split()));
        }
        MasteryPopulation learned = PUPILS.learnedFrom(pupils);

        double taking = learned.mean(new Strand.OfMove(Move.TAKE_TEN_COMPLEMENT));
        assertThat(Math.exp(taking)).isBetween(1.8, 5.0);
        for (Move move : Move.values()) {
            if (move != Move.TAKE_TEN_COMPLEMENT) {
                assertThat(learned.mean(new Strand.OfMove(move))).isLessThan(taking - 0.5);
            }
        }
    }

    @Test
    void theChanceOfARightAnswerIsThatOfManyPossiblePupils() {
        MasteryTally tally = tally(USUAL, 50, new SplittableRandom(2));
        SlipPosterior posterior = told(tally).posterior();
        EventTable table =
                EventTable.of(new Column("1", rows(new SplittableRandom(9)), Terms.PLAIN));
        double[] expected = StrandEvidence.expected(table, USUAL);
        SlipPosterior.Draws draws = posterior.draws();
        SplittableRandom chance = new SplittableRandom(1);
        double sum = 0;
        int pupils = 20_000;
        for (int i = 0; i < pupils; i++) {
            double[] factors = draws.next(chance);
            double slips = 0;
            for (int strand = 0; strand < Strand.COUNT; strand++) {
                slips += expected[strand] * factors[strand];
            }
            sum += Math.exp(-slips);
        }

        assertThat(posterior.expect(table, USUAL).chanceRight())
                .isCloseTo(sum / pupils, within(0.003));
    }

    @Test
    void workInTheHeadHasNoMovesOfTheHand() {
        Terms inMind = Terms.PLAIN.withMode(Mode.MENTAL);
        MasteryTally tally = new MasteryTally(Manner.MIND);
        forSeeds(
                12,
                draw -> {
                    Column column =
                            new Column(
                                    "1", List.of(new BigDecimal(35), new BigDecimal(48)), inMind);
                    tally.add(answer(Attempt.of(column, "83"), OptionalLong.empty()));
                });
        PupilMastery mastery = told(tally);

        assertThat(mastery.moves()).isEmpty();
        assertThat(mastery.cells()).isEmpty();
        assertThat(mastery.kinds().getFirst().right()).isEqualTo(12);
    }

    @Test
    void whatIsLeftAfterADayIsAPartOfIt() {
        assertThatThrownBy(() -> new Forgetting(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Forgetting(1.01)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Forgetting.USUAL.left(46)).isCloseTo(0.5, within(0.005));
    }
}
