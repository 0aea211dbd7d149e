package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

/// A pupil is simulated bead by bead, with one slip somewhere; the finder sees only what is
/// written.
class ColumnSlipsTest {

    /// The slips that a column without totals below zero can have.
    private static final Set<SlipKind> OF_A_COLUMN =
            EnumSet.range(SlipKind.CARRY_LEFT_OUT, SlipKind.WRITTEN_LENGTH);

    @Test
    void everySlipOfASimulatedPupilIsAmongThoseFound() {
        Set<SlipKind> met = EnumSet.noneOf(SlipKind.class);
        forSeeds(
                40,
                draw -> {
                    List<Long> rows = rows(draw, 5, draw.between(1, 4));
                    Fate none = Fate.kind();
                    assertThat(ColumnPupil.writes(rows, none)).hasValue(total(rows));
                    EventTable table = EventTable.of(column(rows));

                    for (int i = 0; i < none.occasions().size(); i++) {
                        OptionalLong written = ColumnPupil.writes(rows, Fate.at(i));
                        if (written.isPresent() && written.getAsLong() != total(rows)) {
                            Fate.Occasion occasion = none.occasions().get(i);
                            met.add(occasion.kind());
                            assertThat(lists(table, written.getAsLong(), occasion))
                                    .as("%s, %s wrote %d", occasion, rows, written.getAsLong())
                                    .isTrue();
                        }
                    }
                });
        assertThat(met).isEqualTo(OF_A_COLUMN);
    }

    /// Bounds: Bayes-optimal with known rates 0.72 and 0.94 for columns of ten rows of five digits,
    /// three in ten of them minus, as worked out by simulation for this project.
    @Test
    void theKindOfMostSlipsIsNamedFirstAndOfNearlyAllAmongThree() {
        int[] named = new int[3];
        forSeeds(
                2_000,
                draw -> {
                    List<Long> rows = rows(draw, 10, 5);
                    Fate none = Fate.kind();
                    long right = ColumnPupil.writes(rows, none).orElseThrow();
                    int fatal = Fate.draw(none.occasions(), draw);
                    OptionalLong written = ColumnPupil.writes(rows, Fate.at(fatal));
                    if (written.isEmpty() || written.getAsLong() == right) {
                        return;
                    }
                    Finding finding =
                            new SlipFinder(Rates.shipped())
                                    .find(column(rows), Long.toString(written.getAsLong()));
                    List<SlipKind> kinds = finding.slips().stream().map(Slip::kind).toList();
                    int rank = kinds.indexOf(none.occasions().get(fatal).kind());
                    named[0]++;
                    named[1] += rank == 0 ? 1 : 0;
                    named[2] += rank >= 0 && rank < 3 ? 1 : 0;
                });
        System.out.println(
                "10x5: "
                        + named[0]
                        + " "
                        + (double) named[1] / named[0]
                        + " "
                        + (double) named[2] / named[0]);
        assertThat(named[0]).isGreaterThan(1_500);
        assertThat((double) named[1] / named[0]).isGreaterThanOrEqualTo(0.66);
        assertThat((double) named[2] / named[0]).isGreaterThanOrEqualTo(0.88);
    }

    private static boolean lists(EventTable table, long written, Fate.Occasion occasion) {
        OptionalInt row =
                occasion.row() == 0 ? OptionalInt.empty() : OptionalInt.of(occasion.row());
        for (int i : table.leadingTo(BigDecimal.valueOf(written))) {
            long code = table.events().code(i);
            boolean sameRow =
                    row.equals(
                            Code.where(code) instanceof Where.Row(int number)
                                    ? OptionalInt.of(number)
                                    : OptionalInt.empty());
            boolean sameRod =
                    occasion.rod() == Fate.NO_ROD
                            || Code.rod(code).equals(OptionalInt.of(occasion.rod()));
            if (Code.way(code).kind() == occasion.kind() && sameRow && sameRod) {
                return table.events().weight(i) > 0;
            }
        }
        return false;
    }

    private static List<Long> rows(Draw draw, int count, int digits) {
        List<Long> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            long row = draw.whole(digits).longValueExact();
            rows.add(draw.chance(3, 10) && total(rows) >= row ? -row : row);
        }
        return rows;
    }

    private static long total(List<Long> rows) {
        return rows.stream().mapToLong(Long::longValue).sum();
    }

    private static Column column(List<Long> rows) {
        return new Column("1", rows.stream().map(BigDecimal::valueOf).toList(), Terms.PLAIN);
    }
}
