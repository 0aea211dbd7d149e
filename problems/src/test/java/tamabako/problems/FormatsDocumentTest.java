package tamabako.problems;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tamabako.problems.csv.ProblemCsv;
import tamabako.problems.json.AttemptJson;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.json.WishJson;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.text.ProblemText;

/// The examples of docs/formats.md are read by the code that they describe.
class FormatsDocumentTest {

    private static final Path DOCUMENT = Path.of("..", "docs", "formats.md");

    @Test
    void everyJsonExampleIsRead() throws IOException {
        List<String> lines = blocks("json");

        assertThat(lines).hasSizeGreaterThan(10);
        for (String line : lines) {
            if (line.startsWith("{\"problem\"")) {
                Attempt attempt = AttemptJson.parse(line);
                assertThat(AttemptJson.line(attempt)).isEqualTo(line);
            } else {
                Problem problem = ProblemJson.parse(line);
                assertThat(ProblemJson.parse(ProblemJson.line(problem))).isEqualTo(problem);
            }
        }
    }

    @Test
    void everyPlainLineIsRead() throws IOException {
        List<String> lines = blocks("problems");

        assertThat(lines).hasSizeGreaterThan(10);
        for (String line : lines) {
            Problem problem = ProblemText.parse(line);
            assertThat(ProblemText.parse(ProblemText.write(problem))).isEqualTo(problem);
        }
        assertThat(ProblemText.parseColumn(blocks("rows")))
                .isEqualTo(ProblemText.parse(lines.getFirst()));
    }

    @Test
    void theSpreadsheetIsReadAndWrittenAsItIsShown() throws IOException {
        String shown = String.join("\n", blocks("csv")) + "\n";
        ProblemFile read = ProblemCsv.read(shown);

        assertThat(read.faults()).isEmpty();
        assertThat(ProblemCsv.write(read.problems()).replace("\r\n", "\n")).isEqualTo(shown);
    }

    @Test
    void everyWishIsReadAndGranted() throws IOException {
        List<String> wishes = blocks("wish");

        assertThat(wishes).hasSizeGreaterThan(4);
        for (String wish : wishes) {
            assertThat(Maker.make(WishJson.parse(wish), 3, 1))
                    .as(wish)
                    .isInstanceOf(Made.Found.class);
        }
    }

    @Test
    void theTableOfMarksHolds() throws IOException {
        List<Problem> asked =
                List.of(
                        column("1427.39"),
                        ProblemText.parse("4595 / 10000 to 2 places"),
                        column("0.45"),
                        ProblemJson.parse(
                                "{\"kind\":\"column\",\"rows\":[\"9528\"],\"unit\":\"JPY\"}"),
                        column("-1234"),
                        ProblemText.parse("100 / 7"));
        List<String> rows = table("| | right | not right |");

        assertThat(rows).hasSameSizeAs(asked);
        for (int i = 0; i < rows.size(); i++) {
            String[] cells = rows.get(i).split("\\|", -1);
            for (String written : answers(cells[2])) {
                Problem problem =
                        written.contains("¥") && i == 4
                                ? ProblemJson.parse(
                                        "{\"kind\":\"column\",\"rows\":[\"-1234\"],\"unit\":\"JPY\"}")
                                : asked.get(i);
                assertThat(Marker.mark(problem, written, WritingRules.STRICT).isRight())
                        .as(written)
                        .isTrue();
            }
            for (String written : answers(cells[3])) {
                assertThat(Marker.mark(asked.get(i), written, WritingRules.STRICT).isRight())
                        .as(written)
                        .isFalse();
            }
        }
    }

    private static Column column(String number) {
        return new Column("", List.of(new BigDecimal(number)), Terms.PLAIN);
    }

    private static List<String> answers(String cell) {
        return Stream.of(cell.split(", | or ", -1)).map(String::strip).toList();
    }

    /// The lines of all code blocks of one kind.
    private static List<String> blocks(String kind) throws IOException {
        List<String> found = new ArrayList<>();
        boolean inside = false;
        for (String line : Files.readAllLines(DOCUMENT)) {
            if (line.startsWith("```")) {
                inside = line.equals("```" + kind);
            } else if (inside) {
                found.add(line);
            }
        }
        return found;
    }

    /// The rows of the table under `head`.
    private static List<String> table(String head) throws IOException {
        List<String> lines = Files.readAllLines(DOCUMENT);
        int start = lines.indexOf(head);
        assertThat(start).isPositive();
        return lines.subList(start + 2, lines.size()).stream()
                .takeWhile(line -> line.startsWith("|"))
                .toList();
    }
}
