package tamabako.insight.readiness;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Pass;

/// What was to be foretold the day before an exam: from nothing but the answers of the days before.
class PastForecastTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

    private static ExamOutcome outcome(Came came, Optional<String> rank) {
        return new ExamOutcome(DAY, "ours", "our-3", came, rank, Map.of());
    }

    private static List<Worked> answers(LocalDate day, int right) {
        List<Worked> dated = new ArrayList<>();
        for (Field field : List.of(Papers.COLUMNS, Papers.PRODUCTS)) {
            for (Worked one : Papers.answers(field, 30, right, 0.2, 0)) {
                dated.add(
                        new Worked(
                                one.field(),
                                one.slips(),
                                one.right(),
                                one.pace(),
                                OptionalLong.of(day.toEpochDay())));
            }
        }
        return dated;
    }

    private static Optional<Recalibration.Outcome> of(List<Worked> answers, Came came) {
        return PastForecast.of(
                answers, Variety.USUAL, Papers.twoSections(), outcome(came, Optional.empty()));
    }

    @Test
    void itIsTheForecastOfThatDayWhateverCameAfter() {
        List<Worked> before = answers(DAY.minusDays(3), 24);
        List<Worked> later = new ArrayList<>(before);
        later.addAll(answers(DAY, 30));
        later.addAll(answers(DAY.plusDays(9), 30));
        later.addAll(Papers.answers(Papers.COLUMNS, 30, 30, 0.2, 0));
        Standing standing = Standing.of(before, Variety.USUAL, OptionalLong.of(DAY.toEpochDay()));
        double told =
                Forecast.PLAIN.of(standing, Papers.twoSections()).pass().orElseThrow().likely();

        assertThat(told).isBetween(0.1, 0.9);
        assertThat(of(before, Came.PASSED))
                .contains(new Recalibration.Outcome(told, true))
                .isEqualTo(of(later, Came.PASSED));
        assertThat(of(later, Came.NOT_PASSED)).contains(new Recalibration.Outcome(told, false));
    }

    @Test
    void whatWasNotSatOrNotToBeForetoldSaysNothing() {
        assertThat(of(answers(DAY.minusDays(3), 24), Came.NOT_SAT)).isEmpty();
        assertThat(of(answers(DAY, 24), Came.PASSED)).isEmpty();
        assertThat(of(answers(DAY.minusDays(900), 24), Came.PASSED)).isEmpty();
    }

    @Test
    void ofRanksTheOneThatWasToBeReachedNextCounts() {
        List<Pass.Rank> ranks =
                List.of(
                        new Pass.Rank("1", Label.of("Dan 1", "初段"), 30),
                        new Pass.Rank("2", Label.of("Dan 2", "弐段"), 80),
                        new Pass.Rank("3", Label.of("Dan 3", "参段"), 100));
        Outline outline =
                Papers.outline(
                        new Pass.ByScore(ranks, Pass.Scored.LOWEST_SECTION),
                        0,
                        Papers.twoSections().parts().toArray(Outline.Part[]::new));
        List<Worked> answers = answers(DAY.minusDays(3), 24);
        Standing standing = Standing.of(answers, Variety.USUAL, OptionalLong.of(DAY.toEpochDay()));
        Readiness told = Forecast.PLAIN.of(standing, outline);
        assertThat(told.next().orElseThrow().id()).isEqualTo("2");
        double second = told.ranks().get(1).chance().likely();

        assertThat(reached(answers, outline, Came.PASSED, "1"))
                .contains(new Recalibration.Outcome(second, false));
        assertThat(reached(answers, outline, Came.PASSED, "2"))
                .contains(new Recalibration.Outcome(second, true));
        assertThat(reached(answers, outline, Came.PASSED, "3"))
                .contains(new Recalibration.Outcome(second, true));
        assertThat(reached(answers, outline, Came.NOT_PASSED, ""))
                .contains(new Recalibration.Outcome(second, false));
        assertThat(reached(answers, outline, Came.PASSED, "")).isEmpty();
        assertThat(reached(answers, outline, Came.PASSED, "gone")).isEmpty();
    }

    private static Optional<Recalibration.Outcome> reached(
            List<Worked> answers, Outline outline, Came came, String rank) {
        Optional<String> reached = Optional.of(rank).filter(one -> !one.isEmpty());
        return PastForecast.of(answers, Variety.USUAL, outline, outcome(came, reached));
    }
}
