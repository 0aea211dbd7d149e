package tamabako.problems.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.OptionalDouble;
import tamabako.problems.Attempt;
import tamabako.problems.Problem;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// Reads and writes one attempt as JSON. The format is told in docs/formats.md.
public final class AttemptJson {

    /// A day: nobody works longer at one problem.
    private static final int MOST_SECONDS = 86_400;

    private AttemptJson() {}

    /// The attempt on one line.
    ///
    /// @throws Unreadable if it is not one
    public static Attempt parse(String line) {
        return read(Lines.parse(line));
    }

    /// The attempt in a JSON object. Keys that an attempt does not have are left alone, so that
    /// files from elsewhere may carry more; those of the problem are not.
    ///
    /// @throws Unreadable if it is not one
    public static Attempt read(JsonNode node) {
        Fields fields = Fields.of(node);
        JsonNode asked = fields.get("problem", "\"problem\":{\"kind\":\"column\", …}");
        Problem problem = Fields.inside("problem", () -> ProblemJson.read(asked));
        JsonNode answer = fields.get("answer", "\"answer\":\"63\"");
        return new Attempt(
                problem,
                Fields.inside("answer", () -> Fields.textOf(answer, "\"63\"")),
                fields.find("seconds", AttemptJson::seconds)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                fields.find("pupil", name -> Fields.textOf(name, "\"aoi\"")),
                fields.find("at", AttemptJson::time),
                fields.find("subtotals", AttemptJson::subtotals).orElse(List.of()));
    }

    /// One line of JSON, without its line end.
    public static String line(Attempt attempt) {
        return Lines.write(write(attempt));
    }

    /// The attempt as a JSON object: only what is set, always in the same order.
    public static ObjectNode write(Attempt attempt) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.set("problem", ProblemJson.write(attempt.problem()));
        node.put("answer", attempt.answer());
        attempt.seconds()
                .ifPresent(
                        seconds -> node.put("seconds", new BigDecimal(Double.toString(seconds))));
        attempt.pupil().ifPresent(pupil -> node.put("pupil", pupil));
        attempt.at()
                .ifPresent(at -> node.put("at", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at)));
        if (!attempt.subtotals().isEmpty()) {
            attempt.subtotals().forEach(node.withArray("subtotals")::add);
        }
        return node;
    }

    private static List<String> subtotals(JsonNode list) {
        return Fields.listOf(list, "[\"54\",\"25\"]", one -> Fields.textOf(one, "\"25\""));
    }

    private static Double seconds(JsonNode node) {
        BigDecimal seconds = Fields.numberOf(node);
        if (seconds.signum() < 0 || seconds.compareTo(BigDecimal.valueOf(MOST_SECONDS)) > 0) {
            throw new Unreadable(new Reason.NotSeconds(Fields.shown(node), MOST_SECONDS));
        }
        return seconds.doubleValue();
    }

    private static OffsetDateTime time(JsonNode node) {
        try {
            return OffsetDateTime.parse(node.asText());
        } catch (DateTimeException _) {
            throw new Unreadable(new Reason.NotATime(Fields.shown(node)));
        }
    }
}
