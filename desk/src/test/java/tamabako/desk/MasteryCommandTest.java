package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MasteryCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Tamabako.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    private List<JsonNode> lines() throws IOException {
        List<JsonNode> lines = new ArrayList<>();
        for (String line : out.toString().lines().toList()) {
            lines.add(JSON.readTree(line));
        }
        return lines;
    }

    private static String attempt(
            String pupil, String mode, double seconds, int off, SplittableRandom chance) {
        List<String> rows = new ArrayList<>();
        long total = 0;
        for (int i = 0; i < 5; i++) {
            long row = chance.nextLong(100, 1_000);
            total += row;
            rows.add("\"" + row + "\"");
        }
        return "{\"problem\":{\"kind\":\"column\",\"rows\":[%s],\"mode\":\"%s\"},"
                        .formatted(String.join(",", rows), mode)
                + "\"answer\":\"%d\",\"seconds\":%s,\"pupil\":\"%s\",\"at\":\"2026-04-14T16:05:00+09:00\"}"
                        .formatted(total + off, seconds, pupil);
    }

    private String file() throws IOException {
        SplittableRandom chance = new SplittableRandom(1);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            lines.add(attempt("goro", "frame", 12 + i % 5, i % 4 == 0 ? -100 : 0, chance));
            lines.add(attempt("aoi", "frame", 9 + i % 3, 0, chance));
        }
        lines.add("this is no attempt");
        lines.add(attempt("aoi", "mental", 8, 0, chance));
        lines.add(attempt("aoi", "frame", 0.1, 0, chance));
        lines.add(attempt("aoi", "frame", 0.9, 0, chance));
        return Files.write(folder.resolve("attempts.jsonl"), lines).toString();
    }

    @Test
    void everyPupilAndMannerHasALineAndABadLineIsNamed() throws IOException {
        assertThat(run("mastery", file())).isEqualTo(1);

        assertThat(err.toString()).contains("line 121: ").contains("line 123: seconds: ");
        assertThat(err.toString()).contains("line 124: seconds: 0.9 seconds are too few for");
        assertThat(lines())
                .extracting(line -> line.get("pupil").asText() + " " + line.get("work").asText())
                .containsExactly("aoi frame", "aoi mind", "goro frame");
        JsonNode goro = lines().get(2);
        assertThat(goro.get("answers").asInt()).isEqualTo(60);
        assertThat(goro.get("wrong").asInt()).isEqualTo(15);
        JsonNode pace = goro.get("pace");
        assertThat(pace.get("problems").asInt()).isEqualTo(60);
        assertThat(pace.get("low").asDouble()).isLessThan(pace.get("times").asDouble());
        assertThat(lines().get(1).get("pace").has("times")).isFalse();
        assertThat(goro.get("moves")).hasSize(9);
        assertThat(goro.get("moves"))
                .allSatisfy(move -> {
                    assertThat(move.get("say").get("ja").asText()).isNotBlank();
                    if (move.get("move").asText().startsWith("take")) {
                        assertThat(move.has("rate")).isFalse();
                        return;
                    }
                    assertThat(move.get("low").asDouble()).isLessThan(move.get("rate").asDouble());
                    assertThat(move.get("high").asDouble())
                            .isGreaterThan(move.get("rate").asDouble());
                });
        double met = 0;
        double steps = 0;
        for (JsonNode cell : goro.get("table")) {
            met += cell.get("met").asInt();
        }
        for (JsonNode move : goro.get("moves")) {
            steps += move.get("steps").asInt();
        }
        assertThat(met).isEqualTo(steps);
        assertThat(lines().get(1).get("moves")).isEmpty();
    }

    @Test
    void aHigherGradeSetsALowerMark() throws IOException {
        String file = file();
        run("mastery", "--ladder", "abacus-by-sections", "--grade", "6", file);
        double low = lines().getFirst().get("moves").get(0).get("mark").asDouble();
        run("mastery", "--ladder", "abacus-by-sections", "--grade", "1", file);
        double high = lines().getFirst().get("moves").get(0).get("mark").asDouble();

        assertThat(high).isLessThan(low).isPositive();
    }

    @Test
    void aGradeWithoutItsLadderIsRefused() throws IOException {
        assertThat(run("mastery", "--grade", "3", file())).isEqualTo(2);
        assertThat(err.toString()).contains("--ladder and --grade go together");
        assertThat(run("mastery", "--ladder", "mental-one-sheet", "--grade", "3", file()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("no problem for the frame");
    }
}
