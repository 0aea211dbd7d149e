package tamabako.problems.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tamabako.problems.Attempt;
import tamabako.problems.Samples;
import tamabako.problems.Unreadable;
import tamabako.testkit.Draw;

class AttemptJsonTest {

    private static final String WHOLE =
            "{\"problem\":{\"kind\":\"column\",\"rows\":[\"54\",\"-29\",\"38\"]},\"answer\":\"63\","
                    + "\"seconds\":8.4,\"pupil\":\"aoi\",\"at\":\"2026-04-14T16:05:00+09:00\","
                    + "\"subtotals\":[\"54\",\"25\"]}";

    @Test
    void aLineIsWrittenAsItWasRead() {
        Attempt attempt = AttemptJson.parse(WHOLE);

        assertThat(attempt.seconds()).hasValue(8.4);
        assertThat(attempt.pupil()).contains("aoi");
        assertThat(attempt.at()).contains(OffsetDateTime.parse("2026-04-14T16:05:00+09:00"));
        assertThat(attempt.subtotals()).containsExactly("54", "25");
        assertThat(AttemptJson.line(attempt)).isEqualTo(WHOLE);
    }

    @Test
    void everyAttemptIsReadAsItWasWritten() {
        forSeeds(
                1_000,
                draw -> {
                    Attempt attempt = attempt(draw);

                    assertThat(AttemptJson.parse(AttemptJson.line(attempt))).isEqualTo(attempt);
                    assertThat(AttemptJson.read(AttemptJson.write(attempt))).isEqualTo(attempt);
                });
    }

    @Test
    void anAnswerIsKeptAsWritten() {
        String asked = "{\"problem\":{\"kind\":\"column\",\"rows\":[\"5\"]},\"answer\":%s}";

        for (String answer : List.of("\"\"", "\" 1,42 \"", "\"¥9,528円\"", "\"？\"", "\"1\\n2\"")) {
            String line = asked.formatted(answer);
            assertThat(AttemptJson.line(AttemptJson.parse(line))).isEqualTo(line);
        }
        assertThat(AttemptJson.parse(asked.formatted("63")).answer()).isEqualTo("63");
        assertThat(AttemptJson.parse(asked.formatted("5.20")).answer()).isEqualTo("5.20");
    }

    @Test
    void whatIsWrongAndHowToMendItIsSaid() {
        String problem = "\"problem\":{\"kind\":\"column\",\"rows\":[\"5\"]}";
        List<String> lines =
                List.of(
                        "{\"answer\":\"63\"}",
                        "{" + problem + "}",
                        "{\"problem\":\"5 + 3\",\"answer\":\"8\"}",
                        "{\"problem\":{\"kind\":\"column\",\"rows\":[\"5\",\"x\"]},\"answer\":\"8\"}",
                        "{" + problem + ",\"answer\":null}",
                        "{" + problem + ",\"answer\":\"" + "1".repeat(201) + "\"}",
                        "{" + problem + ",\"answer\":\"5\",\"seconds\":-1}",
                        "{" + problem + ",\"answer\":\"5\",\"seconds\":86401}",
                        "{" + problem + ",\"answer\":\"5\",\"at\":\"yesterday\"}",
                        "{" + problem + ",\"answer\":\"5\",\"at\":\"2026-04-14T16:05:00\"}",
                        "{" + problem + ",\"answer\":\"5\",\"pupil\":{}}",
                        "{" + problem + ",\"answer\":\"5\",\"subtotals\":\"5\"}",
                        "{" + problem + ",\"answer\":\"5\",\"subtotals\":[\"5\",[]]}",
                        "{\"problem\":{\"kind\":\"column\",\"rows\":[\"5\"],\"name\":\"x\"},\"answer\":\"5\"}");
        StringBuilder said = new StringBuilder();
        for (String line : lines) {
            Unreadable fault =
                    catchThrowableOfType(Unreadable.class, () -> AttemptJson.parse(line));
            assertThat(fault).as(line).isNotNull();
            said.append(line).append('\n');
            said.append("  ").append(fault.getMessage()).append('\n');
            said.append("  ").append(fault.message(Locale.JAPANESE)).append('\n');
        }

        assertGolden("unreadable-attempts.txt", said.toString());
    }

    @Test
    void furtherKeysOfAnAttemptAreLeftAlone() {
        Attempt attempt =
                AttemptJson.parse(
                        "{\"problem\":{\"kind\":\"column\",\"rows\":[\"5\"]},\"answer\":\"5\","
                                + "\"school\":\"Port Linnet\",\"class\":3}");

        assertThat(AttemptJson.line(attempt))
                .isEqualTo("{\"problem\":{\"kind\":\"column\",\"rows\":[\"5\"]},\"answer\":\"5\"}");
    }

    @Test
    void anAttemptTakesNoTimeBelowZero() {
        Attempt attempt = AttemptJson.parse(WHOLE);

        assertThatThrownBy(() ->
                        new Attempt(
                                attempt.problem(),
                                "63",
                                OptionalDouble.of(-0.1),
                                Optional.empty(),
                                Optional.empty(),
                                List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Attempt attempt(Draw draw) {
        return new Attempt(
                Samples.problem(draw),
                draw.oneOf(List.of("", "63", "1,204", "14 あまり 2", "\"\\")),
                draw.chance(1, 2)
                        ? OptionalDouble.of(draw.between(0, 100_000) / 100.0)
                        : OptionalDouble.empty(),
                draw.chance(1, 2) ? Optional.of("葵") : Optional.empty(),
                draw.chance(1, 2)
                        ? Optional.of(
                                OffsetDateTime.of(
                                        draw.between(2000, 2100),
                                        draw.between(1, 12),
                                        draw.between(1, 28),
                                        draw.between(0, 23),
                                        draw.between(0, 59),
                                        draw.between(0, 59),
                                        0,
                                        ZoneOffset.ofHours(draw.between(-11, 13))))
                        : Optional.empty(),
                draw.chance(1, 2) ? List.of("5", "8") : List.of());
    }
}
