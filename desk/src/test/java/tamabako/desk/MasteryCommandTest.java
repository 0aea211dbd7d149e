package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MasteryCommandTest {

    @TempDir Path folder;

    private final Terminal terminal = new Terminal();

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
        assertThat(terminal.run("mastery", file())).isEqualTo(1);

        assertThat(terminal.err()).contains("line 121: ").contains("line 123: seconds: ");
        assertThat(terminal.err()).contains("line 124: seconds: 0.9 seconds are too few for");
        assertThat(terminal.lines())
                .extracting(line -> line.get("pupil").asText() + " " + line.get("work").asText())
                .containsExactly("aoi frame", "aoi mind", "goro frame");
        JsonNode goro = terminal.lines().get(2);
        assertThat(goro.get("answers").asInt()).isEqualTo(60);
        assertThat(goro.get("wrong").asInt()).isEqualTo(15);
        JsonNode pace = goro.get("pace");
        assertThat(pace.get("problems").asInt()).isEqualTo(60);
        assertThat(pace.get("low").asDouble()).isLessThan(pace.get("times").asDouble());
        assertThat(terminal.lines().get(1).get("pace").has("times")).isFalse();
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
        assertThat(terminal.lines().get(1).get("moves")).isEmpty();
    }

    @Test
    void aHigherGradeSetsALowerMark() throws IOException {
        String file = file();
        terminal.run("mastery", "--ladder", "abacus-by-sections", "--grade", "6", file);
        double low = terminal.lines().getFirst().get("moves").get(0).get("mark").asDouble();
        terminal.run("mastery", "--ladder", "abacus-by-sections", "--grade", "1", file);
        double high = terminal.lines().getFirst().get("moves").get(0).get("mark").asDouble();

        assertThat(high).isLessThan(low).isPositive();
    }

    @Test
    void aGradeWithoutItsLadderIsRefused() throws IOException {
        assertThat(terminal.run("mastery", "--grade", "3", file())).isEqualTo(2);
        assertThat(terminal.err()).contains("--ladder and --grade go together");
        assertThat(terminal.run("mastery", "--ladder", "mental-one-sheet", "--grade", "3", file()))
                .isEqualTo(2);
        assertThat(terminal.err()).contains("no problem for the frame");
    }
}
