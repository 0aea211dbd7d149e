package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.problems.grade.Reached;
import tamabako.problems.grade.file.Ladders;
import tamabako.records.demo.DemoClass;

class DemoClassTest {

    private static final Instant NOW = Instant.parse("2026-04-16T09:00:00Z");

    @TempDir Path folder;

    @Test
    void fourteenPupilsInTwoGroupsHaveHandedInWorkThatIsMostlyRight() {
        try (ClassBook book = ClassBook.open(folder.resolve("book.sqlite"))) {
            DemoClass.fill(book, NOW);

            assertThat(book.groups().all())
                    .extracting(Group::name)
                    .containsExactly("Thursday adults", "Tuesday juniors");
            assertThat(book.pupils().all()).hasSize(14).allMatch(Pupil::demo);
            // Juniors: three lessons of two sections, four of three, and three sheets of wishes;
            // adults: eight lessons of three sections.
            int juniors = 3 * 2 + 4 * 3 + 3;
            int adults = 8 * 3;
            assertThat(book.sheets().latest(99))
                    .hasSize(juniors + adults)
                    .allMatch(KeptSheet::demo);
            List<Work> work = book.work().latest(999);
            assertThat(work).hasSizeBetween(8 * juniors * 3 / 4, 8 * juniors + 6 * adults - 1);
            assertThat(work)
                    .flatExtracting(Work::answers)
                    .allMatch(answer -> answer.took().isPresent());
            long right = work.stream().mapToLong(Work::right).sum();
            long all = work.stream().mapToLong(one -> one.answers().size()).sum();
            assertThat(right * 100 / all).isBetween(75L, 95L);
        }
    }

    @Test
    void whoeverWasAwayHasNoWorkOfThatDay() {
        try (ClassBook book = ClassBook.open(folder.resolve("away.sqlite"))) {
            DemoClass.fill(book, NOW);
            List<Attended> away =
                    book.pupils().all().stream()
                            .flatMap(pupil -> book.attendance().of(pupil.id()).stream())
                            .filter(day -> day.how() == Attended.How.ABSENT)
                            .toList();
            assertThat(away)
                    .isNotEmpty()
                    .allSatisfy(day ->
                            assertThat(book.work().of(day.pupilId()))
                                    .extracting(work -> dayOf(work.handedAt()))
                                    .doesNotContain(day.day()));
        }
    }

    @Test
    void everyPupilWentToTwoExamsAndTheirPointsTellWhoPassed() {
        try (ClassBook book = ClassBook.open(folder.resolve("exams.sqlite"))) {
            DemoClass.fill(book, NOW);
            List<ExamOutcome> exams =
                    book.pupils().all().stream()
                            .flatMap(pupil -> book.exams().of(pupil.id()).stream())
                            .map(KeptOutcome::outcome)
                            .toList();

            assertThat(exams).hasSize(2 * 14);
            assertThat(exams).extracting(ExamOutcome::came).contains(Came.values());
            for (ExamOutcome exam : exams) {
                var grade = Ladders.ladder(exam.ladder()).orElseThrow().grade(exam.grade());
                if (exam.isSat()) {
                    boolean passed =
                            Reached.of(grade.orElseThrow(), exam.points()).orElseThrow().passed();
                    assertThat(exam.came() == Came.PASSED).isEqualTo(passed);
                } else {
                    assertThat(exam.points()).isEmpty();
                }
            }
        }
    }

    private static LocalDate dayOf(Instant moment) {
        return LocalDate.ofInstant(moment, ZoneOffset.UTC);
    }

    @Test
    void theHistoryIsTheSameEachTime() {
        assertThat(history("one.sqlite")).isEqualTo(history("two.sqlite"));
    }

    private List<List<Work.MarkedAnswer>> history(String file) {
        try (ClassBook book = ClassBook.open(folder.resolve(file))) {
            DemoClass.fill(book, NOW);
            return book.work().latest(999).stream()
                    .map(Work::answers)
                    .sorted(java.util.Comparator.comparing(Object::toString))
                    .toList();
        }
    }
}
