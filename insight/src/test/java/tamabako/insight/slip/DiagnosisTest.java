package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiagnosisTest {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    private static Diagnosis diagnose(SlipFinder finder, String sum, String written) {
        return finder.diagnose(EventTable.of(SlipFinderTest.problem(sum)), written);
    }

    @Test
    void aRightAnswerShowsNoSlipsButAllOccasions() {
        Diagnosis diagnosis = diagnose(FINDER, "34 78", "112");

        for (SlipKind kind : SlipKind.values()) {
            assertThat(diagnosis.slips().of(kind)).isZero();
        }
        assertThat(diagnosis.occasions().of(SlipKind.CARRY_LEFT_OUT)).isEqualTo(2);
        assertThat(diagnosis.occasions().of(SlipKind.ROW_SKIPPED)).isEqualTo(2);
        assertThat(diagnosis.chance()).isBetween(0.9, 1.0);
    }

    /// 34: two direct steps. 7 on the tens and 8 on the units go over ten by taking 3 and 2; each
    /// carries one, to an empty rod.
    @Test
    void theStepsOfEveryMoveAreCounted() {
        Counts occasions = diagnose(FINDER, "34 78", "112").occasions();

        assertThat(occasions.of(Move.ADD_DIRECT)).isEqualTo(4);
        assertThat(occasions.of(Move.ADD_TEN_COMPLEMENT)).isEqualTo(2);
        assertThat(occasions.of(Move.CARRY_RUNS_ON)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "34 78, 12, ADD_TEN_COMPLEMENT",
        "95 7, 2, CARRY_RUNS_ON",
        "100 -8, 192, CARRY_RUNS_ON",
        "523 -78, 455, TAKE_TEN_WITH_FIVE",
        "4 3, 2, ADD_FIVE_COMPLEMENT",
    })
    void aSlipCountsForTheMoveThatItBelongsTo(String sum, String written, Move move) {
        Diagnosis diagnosis = diagnose(FINDER, sum, written);

        for (Move other : Move.values()) {
            assertThat(diagnosis.slips().of(move))
                    .as(other.word())
                    .isGreaterThanOrEqualTo(diagnosis.slips().of(other));
        }
        assertThat(diagnosis.slips().of(move)).isGreaterThan(0.2);
    }

    @Test
    void theKindsOfAWrongAnswerSumToOneWhereNoPairIsLookedFor() {
        Counts slips = diagnose(FINDER, "34 78", "12").slips();

        double sum = 0;
        for (SlipKind kind : SlipKind.values()) {
            sum += slips.of(kind);
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
    }

    @Test
    void whatIsNoNumberShowsNoSlip() {
        Counts slips = diagnose(FINDER, "34 78", "none").slips();

        assertThat(slips.of(SlipKind.NONE_KNOWN)).isEqualTo(1);
        assertThat(SlipFinder.evidence(EventTable.of(SlipFinderTest.problem("34 78")), "none"))
                .isEmpty();
    }

    @Test
    void aMoveThatAPupilFindsHardMakesItsSlipsLikelier() {
        SlipFinder usual = new SlipFinder(Rates.shipped());
        SlipFinder hard = new SlipFinder(Rates.shipped().with(Move.ADD_FIVE_COMPLEMENT, 20));

        double before = diagnose(usual, "4 3", "2").slips().of(Move.ADD_FIVE_COMPLEMENT);
        double after = diagnose(hard, "4 3", "2").slips().of(Move.ADD_FIVE_COMPLEMENT);

        assertThat(after).isGreaterThan(before);
        assertThatThrownBy(() -> Rates.shipped().with(Move.ADD_DIRECT, 0))
                .hasMessageContaining("add-direct");
    }

    @Test
    void countsSumUp() {
        Diagnosis one = diagnose(FINDER, "34 78", "12");

        Counts sum = Counts.sum(java.util.List.of(one.slips(), one.slips()));

        assertThat(sum.of(SlipKind.CARRY_LEFT_OUT))
                .isEqualTo(2 * one.slips().of(SlipKind.CARRY_LEFT_OUT));
        assertThat(sum.of(Move.ADD_TEN_COMPLEMENT))
                .isEqualTo(2 * one.slips().of(Move.ADD_TEN_COMPLEMENT));
    }
}
