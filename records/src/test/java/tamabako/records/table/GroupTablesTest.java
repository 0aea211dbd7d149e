package tamabako.records.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.RecordsWords;
import tamabako.records.Result;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// The lists of a group, read back by the libraries' own readers.
class GroupTablesTest {

    private static final Instant LATE = Instant.parse("2026-04-14T23:30:00Z");
    private static final String HOSTILE = "=HYPERLINK(\"x\"),\r\n葵";

    @TempDir private Path folder;

    private static List<List<String>> csv(BookTable table) {
        String text = new String(TableCsv.write(table), StandardCharsets.UTF_8);
        assertThat(text).startsWith("\uFEFF");
        return CsvReader.builder().ofCsvRecord(text.substring(1)).stream()
                .map(record -> List.copyOf(record.getFields()))
                .toList();
    }

    private static List<List<String>> workbook(BookTable table) throws IOException {
        try (ReadableWorkbook book =
                new ReadableWorkbook(new ByteArrayInputStream(TableBook.write(table)))) {
            return book.getFirstSheet().read().stream().map(GroupTablesTest::texts).toList();
        }
    }

    private static List<String> texts(Row row) {
        return row.stream().map(cell -> cell == null ? "" : cell.getText()).toList();
    }

    @Test
    void whatIsInTheBookIsInBothFiles() throws IOException {
        try (ClassBook book = ClassBook.open(folder.resolve("book.sqlite"))) {
            Group group = new Group("g", "Tuesday: [juniors]", false);
            book.groups().keep(group);
            book.pupils().keep(new Pupil("p", "g", HOSTILE, Locale.JAPANESE, false));
            book.sheets()
                    .keep(new KeptSheet(new Sheet("SHEET", "-5 sums", List.of()), LATE, false));
            book.work()
                    .keep(
                            Work.of(
                                            "SHEET",
                                            Optional.of("p"),
                                            LATE,
                                            List.of(
                                                    new MarkedAnswer("1", "right"),
                                                    new MarkedAnswer("2", "wrong")))
                                    .taking(Optional.of(Duration.ofSeconds(95))));
            book.results()
                    .keep(
                            new Result(
                                    "r",
                                    "p",
                                    Result.Kind.EXAM,
                                    "6級",
                                    LocalDate.of(2026, 4, 1),
                                    Optional.of(new Result.Score(230, 300)),
                                    "合格"));
            GroupTables english =
                    new GroupTables(book, RecordsWords.of(Locale.ENGLISH), ZoneOffset.ofHours(9));

            List<List<String>> results =
                    List.of(
                            List.of(
                                    "Name", "Day", "Kind", "Title", "Points", "Of", "Seconds",
                                    "Outcome"),
                            List.of(
                                    "'" + HOSTILE,
                                    "2026-04-15",
                                    "Work",
                                    "'-5 sums",
                                    "1",
                                    "2",
                                    "95",
                                    ""),
                            List.of(
                                    "'" + HOSTILE,
                                    "2026-04-01",
                                    "Exam",
                                    "6級",
                                    "230",
                                    "300",
                                    "",
                                    "合格"));
            assertThat(csv(english.results(group))).isEqualTo(results);
            assertThat(workbook(english.results(group)).get(1).subList(1, 7))
                    .isEqualTo(results.get(1).subList(1, 7));
            assertThat(csv(english.pupils(group)).get(1))
                    .startsWith("'" + HOSTILE, "", "Tuesday: [juniors]")
                    .endsWith("ja", "0", "0", "100", "");

            GroupTables japanese =
                    new GroupTables(book, RecordsWords.of(Locale.JAPANESE), ZoneOffset.UTC);
            assertThat(csv(japanese.pupils(group)).getFirst()).startsWith("名前", "よみがな");
        }
    }

    @Test
    void aRowThatDoesNotFitTheColumnsIsRefused() {
        assertThatThrownBy(() -> new BookTable("t", List.of("a", "b"), List.of(List.of("1"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 columns");
    }
}
