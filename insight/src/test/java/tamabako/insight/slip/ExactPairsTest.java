package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

class ExactPairsTest {

    private static final Set<SlipKind> OF_THE_HAND =
            EnumSet.range(SlipKind.CARRY_LEFT_OUT, SlipKind.FIVE_BEAD);

    private int tried;

    /// A pupil is simulated bead by bead with two slips in two rows, the second one of the hand,
    /// apart from the finder; mostly one that the right frame does not allow there.
    @Test
    void everyTwoSlipsOfASimulatedPupilAreAmongThePairs() {
        forSeeds(600, this::tryTwo);

        assertThat(tried).isGreaterThan(200);
    }

    private void tryTwo(Draw draw) {
        List<Long> rows = rows(draw);
        Fate none = Fate.kind();
        long right = ColumnPupil.writes(rows, none).orElseThrow();
        Set<Fate.Occasion> seen = Set.copyOf(none.occasions());
        int first = draw.between(0, none.occasions().size() - 1);
        Fate one = Fate.at(first);
        OptionalLong afterOne = ColumnPupil.writes(rows, one);
        if (afterOne.isEmpty() || afterOne.getAsLong() == right) {
            return;
        }
        Fate.Occasion before = one.occasions().get(first);
        int[] seconds =
                IntStream.range(first, one.occasions().size())
                        .filter(i -> OF_THE_HAND.contains(one.occasions().get(i).kind()))
                        .filter(i -> before.row() < one.occasions().get(i).row())
                        .filter(i -> !draw.chance(9, 10) || !seen.contains(one.occasions().get(i)))
                        .toArray();
        if (seconds.length == 0) {
            return;
        }
        int second = seconds[draw.between(0, seconds.length - 1)];
        Fate.Occasion after = one.occasions().get(second);
        OptionalLong written = ColumnPupil.writes(rows, Fate.at(first, second));
        if (written.isEmpty() || written.getAsLong() == right || written.equals(afterOne)) {
            return;
        }
        EventTable table = EventTable.of(column(rows, Terms.PLAIN));
        long tenths = 10 * (written.getAsLong() - right);
        List<ExactPairs.Pair> pairs = ExactPairs.of(table, tenths);
        tried++;
        assertThat(pairs.stream().anyMatch(pair -> isOf(table, pair, before, after)))
                .as("%s after %s in %s, wrote %s", after, before, rows, written)
                .isTrue();
    }

    /// The other way round: what the pairs tell can be done bead by bead, and leads to the answer.
    @Test
    void everyPairCanBeMadeByASimulatedPupil() {
        int[] made = new int[1];
        forSeeds(
                60,
                draw -> {
                    List<Long> rows = rows(draw);
                    EventTable table = EventTable.of(column(rows, Terms.PLAIN));
                    Fate none = Fate.kind();
                    long right = ColumnPupil.writes(rows, none).orElseThrow();
                    int one = draw.between(0, table.events().ofWork() - 1);
                    int rod = draw.between(0, 7);
                    long off =
                            table.events().tenths(one)
                                    + (draw.chance(1, 2) ? 10 : -10) * Tens.power(rod);
                    for (ExactPairs.Pair pair : ExactPairs.of(table, off)) {
                        if (pair.first() == one && off % 10 == 0) {
                            made[0]++;
                            assertThat(isMade(rows, table, pair, right + off / 10))
                                    .as("%s in %s", Code.way(table.events().code(one)), rows)
                                    .isTrue();
                        }
                    }
                });

        assertThat(made[0]).isGreaterThan(20);
    }

    private static boolean isMade(
            List<Long> rows, EventTable table, ExactPairs.Pair pair, long written) {
        Fate none = Fate.kind();
        ColumnPupil.writes(rows, none);
        List<Fate.Occasion> firsts = none.occasions();
        for (int i = 0; i < firsts.size(); i++) {
            if (is(table.events().code(pair.first()), firsts.get(i))) {
                Fate one = Fate.at(i);
                ColumnPupil.writes(rows, one);
                for (int j = i + 1; j < one.occasions().size(); j++) {
                    if (is(pair.second().code(0), one.occasions().get(j))
                            && ColumnPupil.writes(rows, Fate.at(i, j))
                                    .equals(OptionalLong.of(written))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean isOf(
            EventTable table, ExactPairs.Pair pair, Fate.Occasion first, Fate.Occasion second) {
        boolean secondIsThere = false;
        for (int i = 0; i < pair.second().size(); i++) {
            secondIsThere |= is(pair.second().code(i), second);
        }
        return secondIsThere && is(table.events().code(pair.first()), first);
    }

    private static boolean is(long code, Fate.Occasion occasion) {
        return Code.way(code).kind() == occasion.kind()
                && Code.where(code).equals(new Where.Row(occasion.row()))
                && (occasion.rod() == Fate.NO_ROD
                        || Code.rod(code).equals(OptionalInt.of(occasion.rod())));
    }

    /// Columns short enough that slips often meet.
    private static List<Long> rows(Draw draw) {
        List<Long> rows = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            long row = draw.whole(8).longValueExact();
            long total = rows.stream().mapToLong(Long::longValue).sum();
            rows.add(draw.chance(3, 10) && total >= row ? -row : row);
        }
        return rows;
    }

    private static Column column(List<Long> rows, Terms terms) {
        return new Column("1", rows.stream().map(BigDecimal::valueOf).toList(), terms);
    }

    /// 7 and 6: the 7 read as 2 leaves 2, and 6 more is 8, whose five-bead may be left off: 3 is
    /// written for 13. On the right frame, 6 more than 7 leaves 3, which has no five-bead to lose.
    @Test
    void theSecondSlipMeetsWhatTheFirstHasLeft() {
        EventTable table = EventTable.of(column(List.of(7L, 6L), Terms.PLAIN));
        Fate.Occasion read = new Fate.Occasion(SlipKind.DIGIT_MISREAD, 1, 0, 1);
        Fate.Occasion lost = new Fate.Occasion(SlipKind.FIVE_BEAD, 2, 0, 1);

        List<ExactPairs.Pair> pairs = ExactPairs.of(table, 10 * (3 - 13));

        assertThat(pairs).anyMatch(pair -> isOf(table, pair, read, lost));
        Events alone = table.leadingTo(BigDecimal.valueOf(13 - 5));
        for (int i = 0; i < alone.size(); i++) {
            assertThat(is(alone.code(i), lost)).isFalse();
        }
        assertThat(pairs)
                .allSatisfy(pair -> {
                    long first = table.events().tenths(pair.first());
                    for (int i = 0; i < pair.second().size(); i++) {
                        assertThat(first + pair.second().tenths(i)).isEqualTo(-100);
                    }
                });
    }

    @Test
    void onlyColumnsOnTheFrameWithNoTotalBelowZeroHavePairs() {
        List<Column> others =
                List.of(
                        column(List.of(50L, -95L, 118L), Terms.PLAIN),
                        column(List.of(50L, 95L, 118L), Terms.PLAIN.withMode(Mode.CALLED)));
        for (Column other : others) {
            assertThat(ExactPairs.of(EventTable.of(other), -20)).isEmpty();
        }
        EventTable product = EventTable.of(SlipFinderTest.problem("38*24"));
        assertThat(ExactPairs.of(product, -20)).isEmpty();
    }

    /// Three rows left out of ten, of ten digits each.
    @Test
    void threeSlipsAreToldWhereTwoDoNotLeadToTheAnswer() {
        SlipFinder finder = new SlipFinder(Rates.shipped());
        forSeeds(
                40,
                draw -> {
                    List<Long> rows = new ArrayList<>();
                    for (int i = 0; i < 10; i++) {
                        rows.add(draw.whole(10).longValueExact());
                    }
                    EventTable table = EventTable.of(column(rows, Terms.PLAIN));
                    long left = rows.get(2) + rows.get(5) + rows.get(8);
                    String written =
                            table.answer().subtract(BigDecimal.valueOf(left)).toPlainString();

                    Diagnosis diagnosis = finder.diagnose(table, written);
                    Finding finding = diagnosis.finding();

                    assertThat(finding.two()).isEmpty();
                    Finding.Together three = finding.three().orElseThrow();
                    assertThat(three.share()).isGreaterThan(0.99);
                    assertThat(three.kinds())
                            .containsExactly(
                                    SlipKind.ROW_SKIPPED,
                                    SlipKind.ROW_SKIPPED,
                                    SlipKind.ROW_SKIPPED);
                    assertThat(diagnosis.slips().of(SlipKind.ROW_SKIPPED)).isGreaterThan(2.9);
                    Evidence evidence = SlipFinder.evidence(table, written).orElseThrow();
                    assertThat(evidence.chance(Rates.shipped()))
                            .isCloseTo(diagnosis.chance(), within(1e-9 * diagnosis.chance()));
                });
    }
}
