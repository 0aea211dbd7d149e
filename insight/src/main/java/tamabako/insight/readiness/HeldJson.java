package tamabako.insight.readiness;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import tamabako.frame.words.Languages;

/// Writes how well forecasts held as JSON, the last line of `ready`, told in docs/readiness.md.
/// Figures have three places.
public final class HeldJson {

    private static final List<HeldWords> WORDS =
            Languages.all().stream().map(HeldWords::of).toList();

    private HeldJson() {}

    /// As one object, under the key `forecasts`.
    public static ObjectNode of(ForecastsHeld held) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        ObjectNode told = node.putObject("forecasts");
        told.put("exams", held.exams());
        if (held.isTold()) {
            told.put("foretold", ReadinessJson.rounded(held.foretold(), 3));
            told.put("passed", held.passed());
            told.put("verdict", word(held.verdict()));
            ArrayNode groups = told.putArray("groups");
            held.groups()
                    .forEach(group ->
                            groups.addObject()
                                    .put("foretold", ReadinessJson.rounded(group.told(), 3))
                                    .put("exams", group.exams())
                                    .put("passed", group.passed()));
        } else {
            told.put("needs", ForecastsHeld.NEEDED - held.exams());
        }
        if (held.exams() >= Recalibration.NEEDED) {
            Recalibration correction = held.correction();
            told.putObject("correction")
                    .put("shift", ReadinessJson.rounded(correction.shift(), 3))
                    .put("slope", ReadinessJson.rounded(correction.slope(), 3));
        }
        ObjectNode says = told.putObject("says");
        WORDS.forEach(words -> {
            ArrayNode sentences = says.putArray(words.language().getLanguage());
            words.say(held).forEach(sentences::add);
        });
        return node;
    }

    private static String word(ForecastsHeld.Verdict verdict) {
        return switch (verdict) {
            case AS_TOLD -> "as-told";
            case TOLD_TOO_HIGH -> "told-too-high";
            case TOLD_TOO_LOW -> "told-too-low";
        };
    }
}
