package tamabako.desk.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// Which work on a paper counts as an exam that was sat, and what came of it.
class SatPaperTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

    private static Paper paper(String ladder, String id) {
        Grade grade = Ladders.ladder(ladder).orElseThrow().grade(id).orElseThrow();
        return switch (PaperMaker.of(ladder, grade).make(PaperId.draw(() -> 0), 1, List.of())) {
            case PaperMade.Found(Paper paper, _) -> paper;
            case PaperMade.NotMade none -> throw new AssertionError(none);
        };
    }

    /// The first `right` answers right, the others wrong, each in so many seconds; 0 for untimed.
    private static Work work(Paper paper, int right, double seconds, Optional<Duration> took) {
        List<MarkedAnswer> answers = new ArrayList<>();
        for (int i = 0; i < paper.problems().size(); i++) {
            answers.add(
                    new MarkedAnswer(
                            "1",
                            i < right ? "right" : "wrong",
                            seconds == 0
                                    ? Optional.empty()
                                    : Optional.of(Duration.ofMillis((long) (1000 * seconds)))));
        }
        return Work.of(paper.id(), Optional.of("AOI"), Instant.EPOCH, answers).taking(took);
    }

    private static Optional<Came> came(Paper paper, Work work) {
        return SatPaper.outcome(paper, work, DAY).map(ExamOutcome::came);
    }

    @Test
    void aSheetWithinItsTimeIsPassedByItsPoints() {
        Paper paper = paper("abacus-one-sheet", "3");
        Optional<Duration> time = paper.grade().time();
        int all = paper.problems().size();

        assertThat(came(paper, work(paper, all, 0, time))).contains(Came.PASSED);
        assertThat(came(paper, work(paper, 2, 0, time))).contains(Came.NOT_PASSED);
        ExamOutcome outcome = SatPaper.outcome(paper, work(paper, all, 0, time), DAY).orElseThrow();
        assertThat(outcome.points().values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(paper.grade().fullMarks());
        assertThat(outcome.grade()).isEqualTo("3");
    }

    @Test
    void withoutItsClockOrNotWholeItIsNoExam() {
        Paper paper = paper("abacus-one-sheet", "3");
        Duration time = paper.grade().time().orElseThrow();
        int all = paper.problems().size();
        Work whole = work(paper, all, 0, Optional.of(time));

        assertThat(came(paper, work(paper, all, 0, Optional.of(time.plusSeconds(1))))).isEmpty();
        assertThat(came(paper, work(paper, all, 0, Optional.empty()))).isEmpty();
        assertThat(came(paper, whole.answered(whole.answers().subList(1, all)))).isEmpty();
        double each = (double) time.toSeconds() / all;
        assertThat(came(paper, work(paper, all, each * 0.9, Optional.empty())))
                .contains(Came.PASSED);
        assertThat(came(paper, work(paper, all, each * 1.1, Optional.empty()))).isEmpty();
    }

    @Test
    void eachSectionIsHeldAgainstItsOwnClock() {
        Paper paper = paper("dan-six-sections", "dan");
        int all = paper.problems().size();
        Duration first = paper.sections().getFirst().section().time().orElseThrow();
        int count = paper.sections().getFirst().problems().size();
        double tooLong = 1.1 * first.toSeconds() / count;
        List<MarkedAnswer> answers =
                new ArrayList<>(work(paper, all, 0.1, Optional.empty()).answers());
        Work quick = work(paper, all, 0.1, Optional.empty());
        for (int i = 0; i < count; i++) {
            answers.set(i, work(paper, all, tooLong, Optional.empty()).answers().get(i));
        }

        assertThat(SatPaper.outcome(paper, quick, DAY).orElseThrow().rank()).contains("10");
        assertThat(came(paper, quick.answered(answers))).isEmpty();
    }
}
