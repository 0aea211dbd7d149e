package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
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
                            assertThat(Naming.isAmong(occasion, table, written.getAsLong()))
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
        Naming naming = new Naming();
        forSeeds(
                1_500,
                draw -> {
                    List<Long> rows = rows(draw, 10, 5);
                    naming.ask(column(rows), fate -> ColumnPupil.writes(rows, fate), draw);
                });

        assertThat(naming.asked()).isGreaterThan(1_200);
        assertThat(naming.first()).isGreaterThanOrEqualTo(0.66);
        assertThat(naming.amongThree()).isGreaterThanOrEqualTo(0.88);
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
