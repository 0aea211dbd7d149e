package tamabako.desk.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class WorkCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir private Path folder;

    private record Ran(int exit, String out, String err) {}

    private static Ran run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit =
                new CommandLine(new WorkCommand())
                        .setOut(new PrintWriter(out))
                        .setErr(new PrintWriter(err))
                        .execute(arguments);
        return new Ran(exit, out.toString(), err.toString());
    }

    @Test
    void aSumIsToldStateByStateWithItsSentences() {
        Ran ran = run("54 - 29 + 38");

        assertThat(ran.exit()).isZero();
        assertThat(ran.out().lines())
                .contains(
                        "  034  −2 = +3 −5      Row 2. Take 2 from the tens: 2 = 5 − 3, so add 3"
                                + " and take the five off.")
                .contains("The answer is 63.");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aSumNeedsNoQuotesWhereTheShellLeavesItAlone() {
        assertThat(run("54", "-", "29", "+", "38").out()).contains("The answer is 63.");
        assertThat(run("--", "-95 + 118").out()).contains("The answer is 23.");
    }

    @Test
    void theLanguageIsAChoice() {
        assertThat(run("--lang", "ja", "54 - 29 + 38").out()).contains("答えは63です。");
        assertThat(run("--lang", "ja", "5 / 0").err()).contains("割");
    }

    @Test
    void everyLineOfAFileIsWorkedAndTheBadOnesAreNamed() throws IOException {
        Path file = folder.resolve("problems.txt");
        Files.write(
                file,
                List.of(
                        "# a comment",
                        "54 - 29 + 38",
                        "",
                        "12 +",
                        "{\"id\":\"7\",\"kind\":\"quotient\",\"dividend\":\"1225\",\"divisor\":\"35\"}",
                        "{\"kind\":\"steam\"}"));

        Ran ran = run("--json", "--from", file.toString());

        assertThat(ran.exit()).isEqualTo(1);
        List<JsonNode> lines = ran.out().lines().map(WorkCommandTest::json).toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).get("answer").textValue()).isEqualTo("63");
        assertThat(lines.get(1).get("answer").textValue()).isEqualTo("35");
        assertThat(lines.get(1).get("problem").get("id").textValue()).isEqualTo("7");
        assertThat(ran.err()).contains("line 4: ").contains("line 6: ");
    }

    @ParameterizedTest
    @CsvSource({
        "--rods 13 --unit H, 306 x 4, '\"rods\":13,\"unit\":8,\"unitLetter\":\"H\"'",
        "--frame older, 1 + 1, '\"frame\":\"older\"'",
        "--places 2, 7 / 3, '\"answer\":\"2.33\"'",
        "--places 2 --rounding down, 8 / 3, '\"answer\":\"2.66\",\"remainder\":\"0.02\"'",
        "--places 2 --rounding half-up, 8 / 3, '\"answer\":\"2.67\"'",
        "--carry-first, 8 + 5, '\"states\":[\"008\",\"018\",\"013\"]'",
        "--rods 4, 8 + 5, '\"states\":[\"0008\",\"0003\",\"0013\"]'",
    })
    void theOptionsChangeTheWorking(String options, String sum, String expected) {
        String[] arguments = ("--json " + options + " -- " + sum).split(" ", -1);

        assertThat(run(arguments).out()).contains(expected);
    }

    @Test
    void theOtherWaysOfDivisionAndRootsAreOthers() {
        assertThat(run("--json", "1225 / 35").out())
                .isNotEqualTo(run("--json", "--rounded-trial", "1225 / 35").out());
        assertThat(run("--json", "√729").out())
                .isNotEqualTo(run("--json", "--double-root", "√729").out());
    }

    @ParameterizedTest
    @CsvSource({
        "1, 12 +",
        "1, 5 / 0",
        "1, --rods 44 -- 1 + 1",
        "1, --rods 2 -- 99 + 2",
        "2, --frame steam -- 1 + 1",
        "2, --unit ZZ -- 1 + 1",
        "2, --places 13 -- 1 + 1",
        "2, --places -1 -- 1 + 1",
        "2, --lang xx -- 1 + 1",
        "2, --from a --json -- 1 + 1",
    })
    void whatCannotBeIsToldAndTheExitCodeSaysWhoseFaultItWas(int exit, String line) {
        Ran ran = run(line.split(" ", -1));

        assertThat(ran.exit()).isEqualTo(exit);
        assertThat(ran.err()).isNotBlank().doesNotContain("Exception", "\tat ");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void aFileThatIsNotThereIsTold() {
        Ran ran = run("--from", folder.resolve("missing").toString());

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("missing").doesNotContain("\tat ");
    }

    @Test
    void theUsageShowsAnExample() {
        assertThat(run("--help").out()).contains("tamabako work \"54 - 29 + 38\"");
    }

    private static JsonNode json(String line) {
        try {
            return JSON.readTree(line);
        } catch (IOException broken) {
            throw new AssertionError(line, broken);
        }
    }
}
