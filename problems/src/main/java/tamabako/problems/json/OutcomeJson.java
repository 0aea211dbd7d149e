package tamabako.problems.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;

/// Reads and writes what came of one pupil's exam as JSON. The format is told in docs/readiness.md.
public final class OutcomeJson {

    private static final List<String> KEYS =
            List.of("pupil", "outcome", "ladder", "grade", "day", "rank", "points");

    private static final int MOST_POINTS = 99_999;

    private OutcomeJson() {}

    /// An outcome, and whose it is.
    public record OfPupil(String pupil, ExamOutcome outcome) {}

    /// The outcome on one line; empty where the line holds none, but perhaps an attempt.
    ///
    /// @param ladder the ladder of an outcome that names none
    /// @throws Unreadable if it is meant for one and is none
    public static Optional<OfPupil> find(String line, String ladder) {
        if (!line.contains("\"outcome\"")) {
            return Optional.empty();
        }
        JsonNode node = Lines.parse(line);
        return node.has("outcome") && !node.has("problem")
                ? Optional.of(read(node, ladder))
                : Optional.empty();
    }

    private static OfPupil read(JsonNode node, String ladder) {
        Fields fields = Fields.of(node);
        fields.allow(KEYS);
        Came came = fields.find("outcome", OutcomeJson::came).orElseThrow();
        JsonNode grade = fields.get("grade", "\"grade\":\"3\"");
        fields.get("day", "\"day\":\"2026-06-14\"");
        Optional<String> rank = fields.find("rank", one -> Fields.textOf(one, "\"1\""));
        if (rank.isPresent() && came != Came.PASSED) {
            throw new Unreadable(
                    "outcome", new Reason.UnknownWord(came.word(), List.of(Came.PASSED.word())));
        }
        ExamOutcome outcome =
                new ExamOutcome(
                        fields.find("day", OutcomeJson::day).orElseThrow(),
                        fields.find("ladder", one -> Fields.textOf(one, "\"abacus-one-sheet\""))
                                .orElse(ladder),
                        Fields.inside("grade", () -> Fields.textOf(grade, "\"3\"")),
                        came,
                        rank,
                        fields.find("points", OutcomeJson::points).orElse(Map.of()));
        return new OfPupil(
                fields.find("pupil", one -> Fields.textOf(one, "\"aoi\"")).orElse(""), outcome);
    }

    private static Came came(JsonNode node) {
        List<String> known = Stream.of(Came.values()).map(Came::word).toList();
        return Came.find(node.asText())
                .orElseThrow(
                        () -> new Unreadable(new Reason.UnknownWord(Fields.shown(node), known)));
    }

    private static LocalDate day(JsonNode node) {
        try {
            return LocalDate.parse(node.asText());
        } catch (DateTimeException _) {
            throw new Unreadable(new Reason.OtherValue(Fields.shown(node), "\"2026-06-14\""));
        }
    }

    private static Map<String, Integer> points(JsonNode node) {
        if (!node.isObject()) {
            throw new Unreadable(new Reason.OtherValue(Fields.shown(node), "{\"columns\":80}"));
        }
        Map<String, Integer> points = new TreeMap<>();
        node.properties()
                .forEach(one -> {
                    JsonNode value = one.getValue();
                    if (!value.canConvertToInt()
                            || !value.isIntegralNumber()
                            || value.intValue() < 0
                            || value.intValue() > MOST_POINTS) {
                        throw new Unreadable(
                                Unreadable.shown(one.getKey()),
                                new Reason.OutOfRange(Fields.shown(value), 0, MOST_POINTS));
                    }
                    points.put(one.getKey(), value.intValue());
                });
        return points;
    }

    /// The outcome as a JSON object: only what is set, always in the same order.
    ///
    /// @param pupil whose it is; left out where it is empty
    public static ObjectNode write(String pupil, ExamOutcome outcome) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (!pupil.isEmpty()) {
            node.put("pupil", pupil);
        }
        node.put("outcome", outcome.came().word())
                .put("ladder", outcome.ladder())
                .put("grade", outcome.grade())
                .put("day", outcome.day().toString());
        outcome.rank().ifPresent(rank -> node.put("rank", rank));
        if (!outcome.points().isEmpty()) {
            ObjectNode points = node.putObject("points");
            new TreeMap<>(outcome.points()).forEach(points::put);
        }
        return node;
    }
}
