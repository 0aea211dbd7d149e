package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The command `ready`: attempts in, a line for each pupil out.
class ReadyCommandTest {

    @TempDir private Path folder;

    private final Terminal terminal = new Terminal();

    /// Attempts at columns and products as they stand in the first grades.
    private String attempts(String pupil, int count, int wrongOfTen, double seconds) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            int add = 200 + 37 * i;
            int right = 345 + 678 + 912 - 234 + add;
            boolean wrong = i % 10 < wrongOfTen;
            text.append(
                    "{\"problem\":{\"kind\":\"column\",\"rows\":[\"345\",\"678\",\"912\",\"-234\",\"%d\"]},"
                            .formatted(add));
            text.append(
                    "\"answer\":\"%d\",\"seconds\":%s,\"pupil\":\"%s\"}\n"
                            .formatted(wrong ? right + 10 : right, seconds, pupil));
            int factor = 23 + i;
            text.append(
                    "{\"problem\":{\"kind\":\"product\",\"factors\":[\"%d\",\"47\"]},\"answer\":\"%d\","
                            .formatted(factor, wrong ? factor * 47 + 1 : factor * 47));
            text.append("\"seconds\":%s,\"pupil\":\"%s\"}\n".formatted(seconds, pupil));
        }
        return text.toString();
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("attempts.jsonl"), text).toString();
    }

    @Test
    void everyPupilHasALineAndTheBetterOneIsReadier() throws IOException {
        String file =
                file(
                        attempts("Hina", 25, 0, 12)
                                + "{\"problem\":{\"kind\":\"column\"}}\n"
                                + attempts("Ren", 25, 5, 25));

        assertThat(terminal.run("ready", "--ladder", "abacus-one-sheet", "--grade", "9-10", file))
                .isEqualTo(1);

        assertThat(terminal.err()).contains("line 51: ");
        List<JsonNode> lines = terminal.lines();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).get("pupil").asText()).isEqualTo("Hina");
        JsonNode hina = lines.get(0).get("grades").get(0);
        JsonNode ren = lines.get(1).get("grades").get(0);
        assertThat(higherRank(hina)).isGreaterThan(higherRank(ren) + 0.05);
        assertThat(hina.get("band").get(0).asDouble())
                .isLessThanOrEqualTo(hina.get("chance").asDouble());
        assertThat(hina.get("says").get("ja").get(0).asText()).contains("合格の見込み");
    }

    private static double higherRank(JsonNode grade) {
        JsonNode ranks = grade.get("ranks");
        return ranks.get(ranks.size() - 1).get("chance").asDouble();
    }

    @Test
    void withTooLittleKnownNoChanceIsTold() throws IOException {
        String file = file(attempts("Aoi", 3, 0, 12));

        assertThat(terminal.run("ready", "--ladder", "abacus-one-sheet", file)).isZero();

        JsonNode grade = terminal.lines().getFirst().get("grades").get(0);
        assertThat(grade.has("chance")).isFalse();
        assertThat(grade.get("needs").asInt()).isPositive();
        assertThat(grade.get("helps")).isEmpty();
        for (JsonNode section : grade.get("sections")) {
            assertThat(section.has("points")).isFalse();
        }
    }

    @Test
    void aGradeThatIsNotThereIsNamed() throws IOException {
        String file = file("");

        assertThat(terminal.run("ready", "--ladder", "abacus-one-sheet", "--grade", "99", file))
                .isEqualTo(2);

        assertThat(terminal.err()).contains("has no grade \"99\"");
    }

    /// Columns and products of one pupil on the days before an exam on 14 June, and after it.
    private String dated(String pupil, int wrongOfTen) {
        String before = attempts(pupil, 25, wrongOfTen, 12);
        return before.replace("\"pupil\":", "\"at\":\"2026-06-10T16:00:00+09:00\",\"pupil\":")
                + attempts(pupil, 25, 0, 8)
                        .replace("\"pupil\":", "\"at\":\"2026-06-20T16:00:00+09:00\",\"pupil\":");
    }

    private static String outcome(String pupil, String came) {
        return "{\"pupil\":\"%s\",\"outcome\":\"%s\",\"grade\":\"9-10\",\"day\":\"2026-06-14\"}\n"
                .formatted(pupil, came);
    }

    @Test
    void outcomesAreHeldAgainstForecastsAndFromFiftyOnCorrectThem() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 60; i++) {
            text.append(dated("P%02d".formatted(i), 5))
                    .append(outcome("P%02d".formatted(i), "not-passed"));
        }
        String uncorrected = file(text.toString().replaceAll("(?m)^.*outcome.*\\n", ""));
        assertThat(
                        terminal.run(
                                "ready",
                                "--ladder",
                                "abacus-one-sheet",
                                "--grade",
                                "9-10",
                                uncorrected))
                .isZero();
        List<JsonNode> plain = terminal.lines();
        assertThat(plain).hasSize(60);

        assertThat(
                        terminal.run(
                                "ready",
                                "--ladder",
                                "abacus-one-sheet",
                                "--grade",
                                "9-10",
                                file(text.toString())))
                .isZero();

        List<JsonNode> lines = terminal.lines();
        assertThat(lines).hasSize(61);
        JsonNode held = lines.getLast().get("forecasts");
        assertThat(held.get("exams").asInt()).isEqualTo(60);
        assertThat(held.get("passed").asInt()).isZero();
        assertThat(held.get("verdict").asText()).isEqualTo("told-too-high");
        assertThat(held.get("correction").get("shift").asDouble()).isNegative();
        assertThat(held.get("says").get("ja").get(0).asText()).contains("60件");
        double before = higherRank(plain.getFirst().get("grades").get(0));
        double after = higherRank(lines.getFirst().get("grades").get(0));
        assertThat(before).isBetween(0.3, 0.99);
        assertThat(after).isLessThan(before - 0.1);
    }

    @Test
    void anOutcomeOfNoGradeIsNamedAndTheRestIsDone() throws IOException {
        String file =
                file(
                        outcome("Aoi", "won")
                                + outcome("Aoi", "passed").replace("9-10", "99")
                                + outcome("Aoi", "passed")
                                        .replace("\"grade\"", "\"rank\":\"8\",\"grade\"")
                                + attempts("Aoi", 3, 0, 12));

        assertThat(terminal.run("ready", "--ladder", "abacus-one-sheet", file)).isEqualTo(1);

        assertThat(terminal.err())
                .contains("line 1: outcome: ", "line 2: grade: \"99\" is not known here");
        assertThat(terminal.lines().getFirst().get("answers").asInt()).isEqualTo(6);
    }
}
