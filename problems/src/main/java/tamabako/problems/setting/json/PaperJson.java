package tamabako.problems.setting.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Numerals;
import tamabako.problems.Pad;
import tamabako.problems.Problem;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;
import tamabako.problems.setting.SettersCustoms;

/// Reads and writes one paper as JSON. The format is told in docs/formats.md.
public final class PaperJson {

    private static final JsonMapper MAPPER = new JsonMapper();

    private PaperJson() {}

    /// One line of JSON, without its line end.
    public static String line(Paper paper) {
        return write(paper).toString();
    }

    /// The paper as a JSON object, always in the same order.
    public static ObjectNode write(Paper paper) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("paper", paper.id())
                .put("ladder", paper.ladder())
                .put("grade", paper.grade().id())
                .put("form", paper.form());
        if (paper.customs() == SettersCustoms.LEFT_OUT) {
            node.put("customs", false);
        }
        ArrayNode sections = node.putArray("sections");
        for (PaperSection section : paper.sections()) {
            ObjectNode one = sections.addObject().put("section", section.section().id());
            ArrayNode problems = one.putArray("problems");
            section.problems().forEach(problem -> problems.add(ProblemJson.write(problem)));
            section.pad().ifPresent(pad -> write(pad, one.putArray("pad")));
        }
        return node;
    }

    private static void write(Pad pad, ArrayNode leaves) {
        for (List<BigDecimal> leaf : pad.leaves()) {
            ArrayNode amounts = leaves.addArray();
            leaf.forEach(amount -> amounts.add(amount.toPlainString()));
        }
    }

    /// The paper on one line.
    ///
    /// @param grade the grade that it is a paper of
    /// @throws Unreadable if it is none, or not one of this grade
    public static Paper parse(String line, Grade grade) {
        JsonNode node = tree(line);
        List<PaperSection> sections = new ArrayList<>();
        for (JsonNode section : list(node, "sections")) {
            sections.add(section(section, grade));
        }
        return new Paper(
                text(node, "paper"),
                text(node, "ladder"),
                grade,
                Math.max(1, node.path("form").asInt()),
                node.path("customs").asBoolean(true)
                        ? SettersCustoms.KEPT
                        : SettersCustoms.LEFT_OUT,
                sections);
    }

    private static PaperSection section(JsonNode node, Grade grade) {
        String name = text(node, "section");
        Section section =
                grade.section(name)
                        .orElseThrow(() -> new Unreadable("section", unknown(name, grade)));
        List<Problem> problems = new ArrayList<>();
        for (JsonNode problem : list(node, "problems")) {
            problems.add(ProblemJson.read(problem));
        }
        Optional<Pad> pad = Optional.ofNullable(node.get("pad")).map(PaperJson::pad);
        return new PaperSection(section, problems, pad);
    }

    private static Reason unknown(String name, Grade grade) {
        List<String> known = grade.sections().stream().map(Section::id).toList();
        return new Reason.UnknownWord(Unreadable.shown(name), known);
    }

    private static Pad pad(JsonNode leaves) {
        List<List<BigDecimal>> read = new ArrayList<>();
        for (JsonNode leaf : leaves) {
            List<BigDecimal> amounts = new ArrayList<>();
            leaf.forEach(amount -> amounts.add(Numerals.parse(amount.asText())));
            read.add(amounts);
        }
        return new Pad(read);
    }

    private static JsonNode tree(String line) {
        try {
            return MAPPER.readTree(line);
        } catch (JsonProcessingException broken) {
            long at = broken.getLocation() == null ? 0 : broken.getLocation().getColumnNr();
            throw new Unreadable(new Reason.NotJson((int) Math.max(1, at)));
        }
    }

    private static String text(JsonNode node, String key) {
        return get(node, key, "\"...\"").asText();
    }

    private static JsonNode list(JsonNode node, String key) {
        return get(node, key, "[...]");
    }

    private static JsonNode get(JsonNode node, String key, String example) {
        JsonNode value = node.get(key);
        if (value == null) {
            throw new Unreadable(new Reason.MissingKey(key, "\"%s\":%s".formatted(key, example)));
        }
        return value;
    }
}
