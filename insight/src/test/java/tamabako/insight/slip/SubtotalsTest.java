package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.problems.Attempt;
import tamabako.problems.Column;
import tamabako.problems.Terms;

class SubtotalsTest {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    private static Diagnosis diagnose(Column column, String answer, List<String> subtotals) {
        Attempt attempt =
                new Attempt(
                        column,
                        answer,
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        subtotals);
        return FINDER.diagnose(EventTable.of(column), attempt);
    }

    private static Column column(String rows) {
        return (Column) SlipFinderTest.problem(rows);
    }

    /// 100 too small may be a carry in any of three rows; the totals show which.
    @ParameterizedTest
    @CsvSource({"112 231 309, 2", "112 331 309, 3"})
    void totalsOnTheWayShowTheRow(String totals, int row) {
        Column column = column("34 78 219 78");
        List<String> written = List.of(("34 " + totals.replace("112 231", "12 231")).split(" "));

        Finding finding = diagnose(column, "309", written).finding();

        assertThat(finding.slips().getFirst().kind()).isEqualTo(SlipKind.CARRY_LEFT_OUT);
        assertThat(finding.slips().getFirst().row()).hasValue(row == 2 ? 2 : 4);
    }

    @Test
    void halfWayTotalsPartTheColumnEvenly() {
        Column column = column("1 2 3 4 5 6 7 8 9 10");

        assertThat(Subtotals.of(column, List.of("15")).orElseThrow().rows()).containsExactly(5);
        assertThat(Subtotals.of(column, List.of("6", "21")).orElseThrow().rows())
                .containsExactly(3, 6);
        List<String> nine = List.of("1", "3", "6", "10", "15", "21", "28", "36", "45");
        assertThat(Subtotals.of(column, nine).orElseThrow().rows())
                .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9);
        assertThat(Subtotals.of(column, List.of("x"))).isEmpty();
        assertThat(Subtotals.of(column, List.of())).isEmpty();
    }

    /// The total after row 2 is written 121 for 112, but the work goes on from 112; row 4 is then
    /// left out.
    @Test
    void aTotalThatIsOnlyWrittenWrongIsNoSlipOfTheWork() {
        Column column = column("34 78 219 78");

        Diagnosis diagnosis = diagnose(column, "331", List.of("34", "121", "331", "331"));

        assertThat(diagnosis.slips().of(SlipKind.WRITTEN_SWAPPED)).isGreaterThan(0.5);
        assertThat(diagnosis.slips().of(SlipKind.ROW_SKIPPED)).isGreaterThan(0.8);
    }

    @Test
    void withoutTotalsTheAnswerAloneTells() {
        Column column = column("34 78");

        assertThat(diagnose(column, "12", List.of()).finding())
                .isEqualTo(FINDER.find(column, "12"));
        assertThat(diagnose(column, "112", List.of("34", "12")).finding().right()).isTrue();
    }

    @Test
    void theSharesSumToOne() {
        Finding finding =
                diagnose(column("34 78 219 78"), "309", List.of("34", "12", "231")).finding();

        double sum = finding.slips().stream().mapToDouble(Slip::share).sum();
        assertThat(sum).isBetween(1 - 1e-9, 1 + 1e-9);
    }

    /// Bound: with totals after every row the kind can be named first in .903 of columns of ten
    /// rows of three digits, and the rows are nearly always right.
    @Test
    void withATotalAfterEveryRowMoreKindsAndNearlyAllRowsAreNamed() {
        int[] counts = new int[4];
        forSeeds(
                400,
                draw -> {
                    List<Long> rows = new ArrayList<>();
                    for (int i = 0; i < 10; i++) {
                        rows.add(draw.whole(3).longValueExact());
                    }
                    Fate none = Fate.kind();
                    List<Long> right = ColumnPupil.writesTotals(rows, none);
                    double drawn = (double) draw.between(0, (1 << 30) - 1) / (1 << 30);
                    int fatal = Fate.draw(none.occasions(), Rates.shipped(), drawn);
                    List<Long> totals = ColumnPupil.writesTotals(rows, Fate.at(fatal));
                    if (totals.isEmpty() || totals.getLast().equals(right.getLast())) {
                        return;
                    }
                    Column column =
                            new Column(
                                    "1",
                                    rows.stream().map(BigDecimal::valueOf).toList(),
                                    Terms.PLAIN);
                    List<String> written = totals.stream().map(String::valueOf).toList();
                    Slip first =
                            diagnose(column, written.getLast(), written.subList(0, 9))
                                    .finding()
                                    .slips()
                                    .getFirst();
                    Fate.Occasion truth = none.occasions().get(fatal);
                    counts[0]++;
                    counts[1] += first.kind() == truth.kind() ? 1 : 0;
                    if (truth.row() > 0) {
                        counts[2]++;
                        counts[3] += first.row().orElse(0) == truth.row() ? 1 : 0;
                    }
                });

        assertThat((double) counts[1] / counts[0]).isGreaterThan(0.8);
        assertThat((double) counts[3] / counts[2]).isGreaterThan(0.95);
    }
}
