package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.problems.Column;
import tamabako.problems.Product;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;
import tamabako.records.Work.MarkedAnswer;

class ClassBookTest {

    private static final Instant TUESDAY = Instant.parse("2026-04-14T07:05:00Z");

    @TempDir Path folder;

    private static KeptSheet sheet(boolean demo) {
        BigDecimal five = new BigDecimal("5.25");
        return new KeptSheet(
                new Sheet(
                        Identity.readable(),
                        "火曜日 Tuesday",
                        List.of(
                                new Column("1", List.of(five, five.negate()), Terms.PLAIN),
                                new Product(
                                        "2", five, BigDecimal.TEN, Terms.PLAIN.withUnit("JPY")))),
                TUESDAY,
                demo);
    }

    @Test
    void whatWasKeptIsThereAfterTheBookIsOpenedAgain() {
        KeptSheet kept = sheet(false);
        Pupil aoi = new Pupil(Identity.fresh(), "g", "Aoi", Locale.JAPANESE, false);
        Work work =
                Work.of(
                        kept.sheet().id(),
                        Optional.of(aoi.id()),
                        TUESDAY,
                        List.of(new MarkedAnswer("0", "right"), new MarkedAnswer("52", "wrong")));
        try (ClassBook book = ClassBook.open(folder.resolve("new/book.sqlite"))) {
            book.keep(new Group("g", "Tuesday juniors", false), List.of(aoi));
            book.keep(kept);
            book.keep(work);
        }
        try (ClassBook book = ClassBook.open(folder.resolve("new/book.sqlite"))) {
            assertThat(book.groups()).containsExactly(new Group("g", "Tuesday juniors", false));
            assertThat(book.findPupil(aoi.id())).contains(aoi);
            assertThat(book.findSheet(kept.sheet().id())).contains(kept);
            assertThat(book.latestSheets(10)).containsExactly(kept);
            assertThat(book.latestWork(10)).containsExactly(work);
            assertThat(work.right()).isEqualTo(1);
        }
    }

    @Test
    void workForASheetThatIsNotInTheBookIsRefusedWhole() {
        try (ClassBook book = ClassBook.open(folder.resolve("book.sqlite"))) {
            Work stray =
                    Work.of(
                            "NONE-HERE",
                            Optional.empty(),
                            TUESDAY,
                            List.of(new MarkedAnswer("1", "right")));

            assertThatThrownBy(() -> book.keep(stray))
                    .isInstanceOf(RecordsFailure.class)
                    .hasMessageContaining("nothing was changed");
            assertThat(book.latestWork(10)).isEmpty();
        }
    }

    @Test
    void removingTheDemoLeavesTheTeachersOwnClass() {
        try (ClassBook book = ClassBook.open(folder.resolve("book.sqlite"))) {
            KeptSheet own = sheet(false);
            KeptSheet demo = sheet(true);
            book.keep(new Group("own", "Own", false), List.of());
            book.keep(
                    new Group("demo", "Demo", true),
                    List.of(new Pupil("p", "demo", "Ben", Locale.ENGLISH, true)));
            book.keep(own);
            book.keep(demo);
            book.keep(Work.of(demo.sheet().id(), Optional.of("p"), TUESDAY, List.of()));

            book.removeDemo();

            assertThat(book.groups()).extracting(Group::id).containsExactly("own");
            assertThat(book.pupils()).isEmpty();
            assertThat(book.latestSheets(10)).containsExactly(own);
            assertThat(book.latestWork(10)).isEmpty();
        }
    }

    @Test
    void aFileThatIsNoClassBookIsRefusedAndLeftAlone() throws IOException {
        Path file = folder.resolve("letter.txt");
        Files.writeString(file, "Dear parents, ".repeat(100));

        assertThatThrownBy(() -> ClassBook.open(file))
                .isInstanceOf(RecordsFailure.class)
                .hasMessageContaining("letter.txt")
                .hasMessageContaining("Is it a class book");
        assertThat(Files.readString(file)).startsWith("Dear parents");
    }
}
