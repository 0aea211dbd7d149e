package tamabako.insight.pooling;

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
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

/// Pupils are simulated bead by bead; what is asked sees only what they write.
class PoolingTest {

    private static final Rates USUAL = Rates.shipped();

    private static Column column(Draw draw) {
        List<BigDecimal> rows = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            rows.add(new BigDecimal(draw.whole(5)));
        }
        return new Column("1", rows, Terms.PLAIN);
    }

    private static List<Evidence> answers(Rates rates, int problems, Draw draw) {
        SplittableRandom chance = new SplittableRandom(draw.bits());
        List<Evidence> answers = new ArrayList<>();
        for (int i = 0; i < problems; i++) {
            Column column = column(draw);
            List<Long> rows = column.rows().stream().map(BigDecimal::longValueExact).toList();
            OptionalLong written = ColumnPupil.writes(rows, Fate.by(rates, chance, Habit.NONE));
            if (written.isPresent()) {
                String answer = Long.toString(written.getAsLong());
                SlipFinder.evidence(EventTable.of(column), answer).ifPresent(answers::add);
            }
        }
        return answers;
    }

    @Test
    void aPupilOfWhomNothingIsKnownHasTheUsualRates() {
        Rates rates = PupilRates.of(Population.shipped(), List.of());

        for (SlipKind kind : SlipKind.values()) {
            assertThat(rates.of(kind)).isCloseTo(USUAL.of(kind), within(1e-12));
        }
    }

    /// 300 columns of some 22 carries each, 8 times as many carries left out as usual.
    @Test
    void aPupilsOwnRateIsFoundFromManyAnswers() {
        double rate = 8 * USUAL.of(SlipKind.CARRY_LEFT_OUT);
        List<Evidence> answers =
                answers(USUAL.with(SlipKind.CARRY_LEFT_OUT, rate), 300, new Draw(7));

        Rates own = PupilRates.of(Population.shipped(), answers);

        assertThat(own.of(SlipKind.CARRY_LEFT_OUT)).isCloseTo(rate, within(0.35 * rate));
        assertThat(own.of(SlipKind.ROW_SKIPPED)).isLessThan(3 * USUAL.of(SlipKind.ROW_SKIPPED));
    }

    @Test
    void rightAnswersLowerTheRates() {
        List<Evidence> answers = answers(USUAL.with(_ -> 1e-12), 100, new Draw(3));

        Rates own = PupilRates.of(Population.shipped(), answers);

        assertThat(answers).allMatch(Evidence::right);
        assertThat(own.of(SlipKind.CARRY_LEFT_OUT))
                .isLessThan(0.3 * USUAL.of(SlipKind.CARRY_LEFT_OUT));
    }

    /// Pupils skip rows four times as often as shipped and hardly ever read a digit wrong; nobody
    /// says what was wrong in any answer.
    @Test
    void thePopulationsRatesAreLearnedFromAnswersAlone() {
        Rates truth = USUAL.with(SlipKind.ROW_SKIPPED, 0.012).with(SlipKind.DIGIT_MISREAD, 0.00005);
        List<Evidence> answers = answers(truth, 2_500, new Draw(11));

        Rates learned = Population.shipped().learnedFrom(answers).rates();

        assertThat(learned.of(SlipKind.ROW_SKIPPED)).isCloseTo(0.012, within(0.002));
        assertThat(learned.of(SlipKind.DIGIT_MISREAD)).isLessThan(0.00025);
        assertThat(Evidence.sum(answers, learned).logChance())
                .isGreaterThan(Evidence.sum(answers, USUAL).logChance());
    }

    @Test
    void aFewAnswersHardlyMoveThePopulation() {
        Rates learned = Population.shipped().learnedFrom(answers(USUAL, 10, new Draw(5))).rates();

        for (SlipKind kind : SlipKind.values()) {
            assertThat(learned.of(kind))
                    .as(kind.word())
                    .isBetween(0.6 * USUAL.of(kind), 1.7 * USUAL.of(kind));
        }
    }

    @Test
    void aMainSlipIsNamedAndNoneWhereThereIsNone() {
        int[] right = new int[2];
        forSeeds(
                12,
                draw -> {
                    Rates careless = USUAL.with(SlipKind.FIVE_BEAD, 20 * 0.0004);
                    MainSlip main = main(careless, draw);
                    right[0] +=
                            main.standsOut()
                                            && main.likeliest().getFirst().kind()
                                                    == SlipKind.FIVE_BEAD
                                    ? 1
                                    : 0;
                    right[1] += main(USUAL, draw).standsOut() ? 1 : 0;
                });

        assertThat(right[0]).isGreaterThanOrEqualTo(11);
        assertThat(right[1]).isLessThanOrEqualTo(2);
    }

    private static MainSlip main(Rates rates, Draw draw) {
        List<Evidence> wrong =
                answers(rates, 120, draw).stream().filter(one -> !one.right()).limit(20).toList();
        return new MainSlipFinder(USUAL).find(wrong);
    }

    @Test
    void certaintiesSumToLessThanOneBecauseThereMayBeNoMainSlip() {
        MainSlip main = main(USUAL, new Draw(2));

        double sum = main.likeliest().stream().mapToDouble(MainSlip.Candidate::certainty).sum();
        assertThat(sum).isBetween(0.0, 1.0);
        assertThat(main.likeliest())
                .isSortedAccordingTo(
                        (a, b) -> Double.compare(b.logBayesFactor(), a.logBayesFactor()));
        assertThat(main.likeliest()).allMatch(one -> one.share() >= 0.3 && one.share() <= 0.7);
    }

    @Test
    void withoutWrongAnswersNothingStandsOut() {
        MainSlip main = new MainSlipFinder(USUAL).find(List.of());

        assertThat(main.wrong()).isZero();
        assertThat(main.standsOut()).isFalse();
    }

    @Test
    void aShapeThatIsNoneIsRefused() {
        assertThatThrownBy(() -> new Population(USUAL, 0)).hasMessageContaining("above 0");
    }

    @Test
    void noAnswersTeachNothing() {
        assertThat(Population.shipped().learnedFrom(List.of())).isEqualTo(Population.shipped());
    }
}
