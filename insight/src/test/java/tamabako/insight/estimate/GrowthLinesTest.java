package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Reaction times after days of little sleep, against lme4.
class GrowthLinesTest {

    private static List<LineSums> sums() {
        Table table = Table.read("sleepstudy-sums");
        List<LineSums> sums = new ArrayList<>();
        for (int i = 0; i < table.rows().size(); i++) {
            sums.add(
                    new LineSums(
                            table.numbers("n").get(i),
                            table.numbers("x").get(i),
                            table.numbers("xx").get(i),
                            table.numbers("y").get(i),
                            table.numbers("xy").get(i),
                            table.numbers("yy").get(i)));
        }
        return sums;
    }

    private static List<Double> numbers(GrowthLines lines) {
        return List.of(
                lines.intercept().value(),
                lines.slope().value(),
                lines.intercept().standardError(),
                lines.slope().standardError(),
                lines.interceptSpread(),
                lines.slopeSpread(),
                lines.correlation(),
                lines.residual(),
                lines.deviance());
    }

    @Test
    void byRestrictedLikelihood() {
        GrowthLines found = GrowthLines.of(sums(), Criterion.RESTRICTED);

        Largest.between(
                        numbers(found),
                        Table.read("sleepstudy").where("fit", "REML").numbers("est"))
                .isAtMost(1e-3);
    }

    @Test
    void byLikelihood() {
        GrowthLines found = GrowthLines.of(sums(), Criterion.LIKELIHOOD);

        Largest.between(numbers(found), Table.read("sleepstudy").where("fit", "ML").numbers("est"))
                .isAtMost(1e-3);
        // lme4's own with its search going on to 1e-10.
        assertThat(found.interceptSpread()).isCloseTo(23.7805649857756, within(1e-5));
        assertThat(found.slopeSpread()).isCloseTo(5.7168345798898, within(1e-5));
    }

    @Test
    void howEachPersonDiffers() {
        Table expected = Table.read("sleepstudy-sums");

        List<GrowthLines.Line> found = GrowthLines.of(sums(), Criterion.RESTRICTED).persons();

        Largest.between(
                        found.stream().map(GrowthLines.Line::intercept).toList(),
                        expected.numbers("b0"))
                .isAtMost(1e-3);
        Largest.between(
                        found.stream().map(GrowthLines.Line::slope).toList(),
                        expected.numbers("b1"))
                .isAtMost(1e-3);
    }

    /// Two persons on one line, with the same noise on both.
    @Test
    void personsWhoDoNotDifferDoNotSpread() {
        LineSums person = LineSums.NONE;
        for (int x = 0; x < 10; x++) {
            person = person.with(x, 5 + 2 * x + (x % 2 == 0 ? 0.1 : -0.1));
        }

        GrowthLines found = GrowthLines.of(List.of(person, person, person), Criterion.RESTRICTED);

        assertThat(found.interceptSpread()).isCloseTo(0, within(1e-4));
        assertThat(found.slopeSpread()).isCloseTo(0, within(1e-4));
        assertThat(found.slope().value()).isCloseTo(2, within(0.01));
    }
}
