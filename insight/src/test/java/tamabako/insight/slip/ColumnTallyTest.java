package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Mode;

/// What a column asks for is counted without its slips, and is what they sum up to.
class ColumnTallyTest {

    private static final double ROUNDED = 1e-9;

    @Test
    void occasionsAndStepsAreThoseOfAllSlips() {
        Set<SlipKind> met = EnumSet.noneOf(SlipKind.class);
        forSeeds(
                6_000,
                draw -> {
                    Column column = SlipsTowardTest.column(draw);
                    Tally expected = Tally.of(ProblemSlips.of(column, Set.of()));

                    Tally counted = Tally.of(column, Set.of()).orElseThrow();

                    assertThat(counted.steps()).isEqualTo(expected.steps());
                    assertThat(counted.cells()).isEqualTo(expected.cells());
                    for (int slot = 0; slot < Slot.COUNT; slot++) {
                        assertThat(counted.occasions()[slot])
                                .as("%s in %s", Slot.kind(slot), column.rows())
                                .isCloseTo(expected.occasions()[slot], within(ROUNDED));
                        if (expected.occasions()[slot] > 0) {
                            met.add(Slot.kind(slot));
                        }
                    }
                });
        assertThat(met)
                .containsAll(EnumSet.range(SlipKind.CARRY_LEFT_OUT, SlipKind.WRITTEN_LENGTH))
                .contains(SlipKind.COMPLEMENT_MISREAD);
    }

    @Test
    void misreadDigitsLeadToSoManyAnswersAndToNoMoreThanAllSlips() {
        forSeeds(
                1_000,
                draw -> {
                    Column column = SlipsTowardTest.column(draw);
                    Events events = ProblemSlips.of(column, Set.of());
                    Set<Long> misread = new TreeSet<>();
                    for (int i = 0; i < events.size(); i++) {
                        if (Code.way(events.code(i)) == Way.DIGIT_MISREAD) {
                            misread.add(events.tenths(i));
                        }
                    }

                    int counted = UnitRows.of(column).orElseThrow().answersOfMisreading();

                    assertThat(counted)
                            .isEqualTo(misread.size())
                            .isLessThanOrEqualTo(new GroupedSlips(events).workAnswers());
                });
    }

    @Test
    void theTableCountsTheSameBeforeAndAfterItsSlipsAreListed() {
        EventTable table = EventTable.of(SlipFinderTest.problem("314 96 -205 7"));
        EventTable listed = EventTable.of(table.problem());
        assertThat(listed.slips()).isPositive();

        for (SlipKind kind : SlipKind.values()) {
            assertThat(table.occasions(kind)).isCloseTo(listed.occasions(kind), within(ROUNDED));
        }
        for (Move move : Move.values()) {
            assertThat(table.steps(move)).isEqualTo(listed.steps(move));
        }
    }

    @Test
    void otherProblemsAreCountedByTheirSlips() {
        assertThat(Tally.of(SlipFinderTest.problem("38*24"), Set.of())).isEmpty();
        assertThat(Tally.of(SlipFinderTest.in(Mode.MENTAL, "34 78"), Set.of())).isEmpty();
        assertThat(EventTable.of(SlipFinderTest.problem("38*24")).occasions(SlipKind.TABLE_SLIP))
                .isPositive();
    }
}
