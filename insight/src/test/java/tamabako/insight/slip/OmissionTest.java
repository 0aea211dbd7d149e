package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.problems.Problem;

class OmissionTest {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());
    private static final Problem LONG =
            SlipFinderTest.problem("48213 95127 60482 31795 57364 29018 74651 86290 13574 60927");

    private static Finding without(Omission part, Problem problem, String written) {
        return FINDER.find(EventTable.without(Set.of(part), problem), written);
    }

    /// 3 and 1: the frame shows 4 after it, and has no fifth lower bead to slip in.
    @Test
    void withoutTheBeadCheckBeadsSlipThatAreNotThere() {
        Problem sum = SlipFinderTest.problem("3 1");
        EventTable checked = EventTable.of(sum);
        EventTable unchecked = EventTable.without(Set.of(Omission.BEAD_CHECK), sum);

        assertThat(isOneBeadMore(checked)).isFalse();
        assertThat(isOneBeadMore(unchecked)).isTrue();
        assertThat(unchecked.slips()).isGreaterThan(checked.slips());
    }

    private static boolean isOneBeadMore(EventTable table) {
        Events slips = table.leadingTo(new BigDecimal(5));
        for (int i = 0; i < slips.size(); i++) {
            long code = slips.code(i);
            if (Code.way(code) == Way.ONE_BEAD_MORE && Code.where(code).equals(new Where.Row(2))) {
                return true;
            }
        }
        return false;
    }

    @Test
    void withoutSeveralSlipsTwoAreNotLookedFor() {
        String written = LONG.answer().value().subtract(new BigDecimal(75_651)).toPlainString();

        assertThat(FINDER.find(LONG, written).two()).isPresent();
        assertThat(without(Omission.SEVERAL_SLIPS, LONG, written).two()).isEmpty();
    }

    @Test
    void withoutThePencilNothingIsWrittenWrong() {
        Problem sum = SlipFinderTest.problem("31 42 11");

        assertThat(FINDER.find(sum, "840").slips().getFirst().kind())
                .isEqualTo(SlipKind.WRITTEN_LENGTH);
        assertThat(without(Omission.PENCIL, sum, "840").slips())
                .extracting(Slip::kind)
                .doesNotContain(SlipKind.WRITTEN_LENGTH, SlipKind.WRITTEN_DIGIT);
    }
}
