package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
            assertThat(book.sheets().latest(99)).hasSize(6).allMatch(KeptSheet::demo);
            List<Work> work = book.work().latest(999);
            assertThat(work).hasSize(8 * 3 + 6 * 3);
            long right = work.stream().mapToLong(Work::right).sum();
            long all = work.stream().mapToLong(one -> one.answers().size()).sum();
            assertThat(right * 100 / all).isBetween(75L, 95L);
        }
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
