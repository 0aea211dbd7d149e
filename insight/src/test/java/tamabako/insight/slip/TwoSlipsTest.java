package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

class TwoSlipsTest {

    private static final Rates RATES = Rates.shipped();
    private static final List<ExactPairs.Pair> NONE = List.of();
    private static final SlipFinder FINDER = new SlipFinder(RATES);

    private static Column column(Draw draw, int rows, int digits) {
        BigDecimal[] drawn = new BigDecimal[rows];
        Arrays.setAll(drawn, i -> new BigDecimal(draw.whole(digits)));
        return new Column("1", List.of(drawn), Terms.PLAIN);
    }

    private static BigDecimal off(EventTable table, long tenths) {
        return table.answer().add(BigDecimal.valueOf(tenths, table.places()));
    }

    /// Every pair of slips is tried, in a double loop, apart from the finder. Where no single slip
    /// leads to the answer, pairs whose second slip is of the hand are worked out; see
    /// [ExactPairsTest].
    @Test
    void theChanceOfTwoSlipsIsTheSumOverAllPairs() {
        forSeeds(
                20,
                draw -> {
                    EventTable table = EventTable.of(column(draw, 10, 5));
                    Events events = table.events();
                    int first = draw.between(0, events.ofWork() - 1);
                    int second = draw.between(0, events.ofWork() - 1);
                    long sum = events.tenths(first) + events.tenths(second);
                    BigDecimal written = off(table, sum);
                    if (sum == 0 || sum % 10 != 0) {
                        return;
                    }
                    boolean alone = table.group(sum) >= 0;
                    double pairs = 0;
                    for (int i = 0; i < events.ofWork(); i++) {
                        for (int j = 0; j <= i; j++) {
                            if (events.tenths(i) + events.tenths(j) == sum
                                    && (alone || addUp(events, i, j))) {
                                pairs += (i == j ? 0.5 : 1) * chance(events, i) * chance(events, j);
                            }
                        }
                    }
                    for (ExactPairs.Pair pair : alone ? NONE : ExactPairs.of(table, sum)) {
                        for (int j = 0; j < pair.second().size(); j++) {
                            pairs += chance(events, pair.first()) * chance(pair.second(), j);
                        }
                    }
                    Explanations explanations = Explanations.of(table, written);
                    Weighing weighing = new Weighing(explanations, written, RATES);
                    double pencil = 0;
                    for (int i = 0; i < explanations.pencils(); i++) {
                        long before = table.tenths(explanations.before(i));
                        for (int j = 0; j < events.ofWork(); j++) {
                            if (events.tenths(j) == before) {
                                pencil +=
                                        chance(events, j)
                                                * RATES.ofSlot(Slot.of(explanations.pencil(i)))
                                                * explanations.pencilWeight(i);
                            }
                        }
                    }

                    double two = weighing.two().orElseThrow().share() * weighing.all();
                    double expected = table.nothing(RATES) * (pairs + pencil);
                    assertThat(two).isCloseTo(expected, within(1e-9 * expected));
                });
    }

    private static boolean addUp(Events events, int one, int other) {
        int later = events.moment(one) < events.moment(other) ? other : one;
        return events.moment(one) == events.moment(other)
                || Code.moveNumber(events.code(later)) == 0;
    }

    private static double chance(Events events, int i) {
        return RATES.of(Code.way(events.code(i)).kind()) * events.weight(i);
    }

    @Test
    void aCarryLeftOutAndARowLeftOutAreNamedTogether() {
        Problem sum =
                SlipFinderTest.problem(
                        "48213 95127 60482 31795 57364 29018 74651 86290 13574 60927");
        BigDecimal written = sum.answer().value().subtract(new BigDecimal(74_651 + 1_000));

        Finding finding = FINDER.find(sum, written.toPlainString());

        Finding.Together two = finding.two().orElseThrow();
        assertThat(two.share()).isGreaterThan(0.9);
        assertThat(two.kinds()).hasSize(2).contains(SlipKind.ROW_SKIPPED);
        assertThat(finding.verdict()).isNotEqualTo(Finding.Verdict.NONE_KNOWN);
    }

    /// 557,441 is right; row 7 left out leaves 482,790, and its 8 and 2 are written swapped.
    @Test
    void aWrongTotalWrittenWrongIsTracedToBoth() {
        Problem sum =
                SlipFinderTest.problem(
                        "48213 95127 60482 31795 57364 29018 74651 86290 13574 60927");
        assertThat(sum.answer().value()).isEqualByComparingTo("557441");

        Diagnosis diagnosis = FINDER.diagnose(EventTable.of(sum), "428790");

        assertThat(diagnosis.slips().of(SlipKind.ROW_SKIPPED)).isGreaterThan(0.9);
        // Two swapped digits of a row, 6 apart on the same rods, would be as much off.
        assertThat(diagnosis.slips().of(SlipKind.WRITTEN_SWAPPED)).isGreaterThan(0.3);
    }

    @Test
    void onShortSumsNoPairsAreLookedForBecauseChanceWouldExplainThem() {
        forSeeds(
                50,
                draw -> {
                    EventTable table = EventTable.of(column(draw, 5, 2));
                    BigDecimal written = table.answer().add(new BigDecimal(draw.between(1, 99)));

                    assertThat(Explanations.tellsPairs(table)).isFalse();
                    assertThat(Explanations.of(table, written).pairs()).isZero();
                    assertThat(FINDER.find(table, written.toPlainString()).two()).isEmpty();
                });
    }

    @Test
    void evidenceAndWeighingGiveTheSameChance() {
        forSeeds(
                60,
                draw -> {
                    EventTable table = EventTable.of(column(draw, 10, draw.between(2, 10)));
                    Events events = table.events();
                    long tenths =
                            events.tenths(draw.between(0, events.ofWork() - 1))
                                    + events.tenths(draw.between(0, events.ofWork() - 1));
                    String written = off(table, tenths - tenths % 10).toPlainString();

                    Diagnosis diagnosis = FINDER.diagnose(table, written);
                    Evidence evidence = SlipFinder.evidence(table, written).orElseThrow();

                    assertThat(evidence.chance(RATES))
                            .isCloseTo(diagnosis.chance(), within(1e-9 * diagnosis.chance()));
                    Counts slips = Evidence.sum(List.of(evidence), RATES).slips();
                    for (SlipKind kind : SlipKind.values()) {
                        assertThat(slips.of(kind))
                                .as(kind.word())
                                .isCloseTo(diagnosis.slips().of(kind), within(1e-9));
                    }
                });
    }
}
