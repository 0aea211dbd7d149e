package tamabako.problems.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Story;
import tamabako.problems.Told;

/// How the numbers of a problem are told, among its fields: `pad`, or `story` with the sums of
/// `earlier`.
final class ToldJson {

    private static final String A_PAD = "\"pad\":{\"line\":3,\"leaf\":4,\"leaves\":8}";
    private static final String A_STORY = "\"story\":{\"en\":\"...\",\"ja\":\"...\"}";
    private static final int MOST_LINES = 20;
    private static final int MOST_LEAVES = 1000;

    /// A word problem has a few sentences.
    private static final int LONGEST_STORY = 1000;

    private ToldJson() {}

    static Optional<Told> read(Fields fields) {
        Optional<Told> pad = fields.find("pad", ToldJson::pad);
        List<Problem> earlier = fields.find("earlier", ToldJson::earlier).orElse(List.of());
        return pad.or(() -> fields.find("story", node -> story(node, earlier)));
    }

    static void write(Told told, ObjectNode node) {
        switch (told) {
            case PadLine(int line, int firstLeaf, int leaves) ->
                    node.putObject("pad")
                            .put("line", line)
                            .put("leaf", firstLeaf)
                            .put("leaves", leaves);
            case Story story -> {
                ObjectNode texts = node.putObject("story");
                new TreeMap<>(story.texts()).forEach(texts::put);
                if (!story.earlier().isEmpty()) {
                    ArrayNode earlier = node.putArray("earlier");
                    story.earlier().forEach(sum -> earlier.add(ProblemJson.write(sum)));
                }
            }
        }
    }

    private static Told pad(JsonNode node) {
        Fields fields = Fields.of(node);
        fields.allow(List.of("line", "leaf", "leaves"));
        return new PadLine(
                whole(fields, "line", MOST_LINES),
                whole(fields, "leaf", MOST_LEAVES),
                whole(fields, "leaves", MOST_LEAVES));
    }

    private static int whole(Fields fields, String key, int most) {
        fields.get(key, A_PAD);
        return fields.whole(key, 1, most).orElseThrow();
    }

    private static Told story(JsonNode node, List<Problem> earlier) {
        Fields fields = Fields.of(node);
        fields.get("en", A_STORY);
        TreeMap<String, String> texts = new TreeMap<>();
        node.fieldNames()
                .forEachRemaining(language ->
                        texts.put(
                                language,
                                fields.find(
                                                language,
                                                text ->
                                                        Fields.textOf(
                                                                text, "\"...\"", LONGEST_STORY))
                                        .orElseThrow()));
        return new Story(texts, earlier);
    }

    private static List<Problem> earlier(JsonNode node) {
        return Fields.listOf(node, "\"earlier\":[{\"kind\":\"product\",...}]", ProblemJson::read);
    }
}
