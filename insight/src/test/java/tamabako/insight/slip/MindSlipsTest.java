package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.MindPupil;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;

class MindSlipsTest {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    /// All that a hand does with beads and rods.
    private static final Set<SlipKind> OF_BEADS =
            EnumSet.of(
                    SlipKind.CARRY_LEFT_OUT,
                    SlipKind.BORROW_LEFT_OUT,
                    SlipKind.TEN_COMPLEMENT_WRONG,
                    SlipKind.FIVE_COMPLEMENT_WRONG,
                    SlipKind.ONE_BEAD,
                    SlipKind.FIVE_BEAD,
                    SlipKind.DIGIT_ON_NEIGHBOUR_ROD,
                    SlipKind.ROW_ON_NEIGHBOUR_ROD);

    private static final Set<SlipKind> OF_THE_HEAD =
            EnumSet.of(
                    SlipKind.DIGIT_MISHEARD,
                    SlipKind.PLACE_MISHEARD,
                    SlipKind.CARRY_LOST,
                    SlipKind.TOTAL_NOT_KEPT);

    /// What teachers of called and mental work name; common practice, no published source. Called,
    /// 1 (ichi) is heard as 7 (shichi); shown, it is read as 7.
    @ParameterizedTest
    @CsvSource({
        "CALLED, 314 96 205, 519, row-skipped",
        "CALLED, 314 96 205, 711, row-twice",
        "MENTAL, 614 -96 205, 915, sign-missed",
        "CALLED, 314 96 205, 675, digit-misheard",
        "MENTAL, 314 96 205, 675, digit-misread",
        "CALLED, 310 96 205, 3401, place-misheard",
        "MENTAL, 314 96 205, 588, digits-swapped-reading",
        "MENTAL, 34 78, 12, carry-lost",
        "CALLED, 523 -78, 455, carry-lost",
    })
    void whatTeachersNameIsNamedFirst(Mode mode, String sum, String written, String kind) {
        Finding finding = FINDER.find(SlipFinderTest.in(mode, sum), written);

        assertThat(finding.slips().getFirst().kind().word()).isEqualTo(kind);
    }

    /// A pupil who works in the head is simulated with one slip somewhere, apart from the finder.
    @Test
    void everySlipOfASimulatedPupilIsAmongThoseFound() {
        Set<SlipKind> met = EnumSet.noneOf(SlipKind.class);
        forSeeds(
                60,
                draw -> {
                    List<Long> rows = new ArrayList<>();
                    for (int i = 0; i < 5; i++) {
                        long row = draw.whole(draw.between(1, 3)).longValueExact();
                        boolean minus = draw.chance(3, 10) && total(rows) >= row;
                        rows.add(minus ? -row : row);
                    }
                    boolean called = draw.chance(1, 2);
                    Terms terms = Terms.PLAIN.withMode(called ? Mode.CALLED : Mode.MENTAL);
                    Column column =
                            new Column("1", rows.stream().map(BigDecimal::valueOf).toList(), terms);
                    EventTable table = EventTable.of(column);
                    Fate none = Fate.kind();
                    assertThat(MindPupil.writes(rows, called, none)).isEqualTo(total(rows));

                    for (int i = 0; i < none.occasions().size(); i++) {
                        Fate.Occasion occasion = none.occasions().get(i);
                        long written = MindPupil.writes(rows, called, Fate.at(i));
                        if (written != total(rows)) {
                            met.add(occasion.kind());
                            assertThat(Naming.isAmong(occasion, table, written))
                                    .as("%s, %s wrote %d", occasion, rows, written)
                                    .isTrue();
                        }
                    }
                });
        assertThat(met).containsAll(OF_THE_HEAD).doesNotContainAnyElementsOf(OF_BEADS);
    }

    private static long total(List<Long> rows) {
        return rows.stream().mapToLong(Long::longValue).sum();
    }

    @Test
    void noSlipOfBeadsIsCarriedOverToTheHead() {
        Terms called = Terms.PLAIN.withMode(Mode.CALLED);
        Terms mental = Terms.PLAIN.withMode(Mode.MENTAL);
        for (EventTable table :
                List.of(
                        EventTable.of(SlipFinderTest.in(Mode.CALLED, "47 86 -29 318")),
                        EventTable.of(SlipFinderTest.in(Mode.MENTAL, "40 -135 118 -283")),
                        EventTable.of(new Product("1", dec(386), dec(47), called)),
                        EventTable.of(new Quotient("1", dec(6528), dec(32), mental)),
                        EventTable.of(new Root("1", 2, dec(729), mental)))) {
            assertThat(table.slips()).isPositive();
            for (SlipKind kind : OF_BEADS) {
                assertThat(table.occasions(kind)).as(kind.word()).isZero();
            }
        }
    }

    @Test
    void noSlipOfTheHeadIsLookedForOnTheFrame() {
        EventTable table = EventTable.of(SlipFinderTest.problem("47 86 -29 318"));

        for (SlipKind kind : OF_THE_HEAD) {
            assertThat(table.occasions(kind)).as(kind.word()).isZero();
        }
    }

    @Test
    void theRatesOfTheHeadAreItsOwn() {
        EventTable table = EventTable.of(SlipFinderTest.in(Mode.MENTAL, "34 78"));
        SlipFinder careless =
                new SlipFinder(
                        Rates.shipped(), Rates.shippedInMind().with(SlipKind.CARRY_LOST, 0.5));

        assertThat(careless.diagnose(table, "12").chance())
                .isGreaterThan(10 * FINDER.diagnose(table, "12").chance());
        assertThat(FINDER.find(table, "12").slips().getFirst().share())
                .isLessThan(careless.find(table, "12").slips().getFirst().share());
        assertThat(Rates.shippedInMind().of(SlipKind.ROW_SKIPPED))
                .isNotEqualTo(Rates.shipped().of(SlipKind.ROW_SKIPPED));
    }

    /// Carries are counted again as they are on paper, digit by digit from the right.
    @Test
    void thereIsAnOccasionToLoseEveryCarry() {
        forSeeds(
                300,
                draw -> {
                    List<BigDecimal> rows = new ArrayList<>();
                    for (int i = 0; i < draw.between(2, 6); i++) {
                        rows.add(new BigDecimal(draw.whole(draw.between(1, 5))));
                    }
                    Column column = new Column("1", rows, Terms.PLAIN.withMode(Mode.MENTAL));

                    assertThat(EventTable.of(column).occasions(SlipKind.CARRY_LOST))
                            .as(rows.toString())
                            .isCloseTo(carries(rows), within(1e-9));
                });
    }

    private static int carries(List<BigDecimal> rows) {
        int carries = 0;
        long total = 0;
        for (BigDecimal row : rows) {
            long left = total;
            long right = row.longValueExact();
            total += right;
            long carry = 0;
            while (left > 0 || right > 0 || carry > 0) {
                carry = (left % 10 + right % 10 + carry) / 10;
                carries += (int) carry;
                left /= 10;
                right /= 10;
            }
        }
        return carries;
    }

    private static BigDecimal dec(long number) {
        return BigDecimal.valueOf(number);
    }
}
