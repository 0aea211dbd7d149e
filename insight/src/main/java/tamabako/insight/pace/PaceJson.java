package tamabako.insight.pace;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import tamabako.frame.words.Languages;

/// Writes how fast a pupil works as JSON, the part `pace` of the format of `mastery`, told in
/// docs/mastery.md. Nothing is told of a pupil with too few times, nor of a part that the pupil's
/// own times do not tell of.
public final class PaceJson {

    private static final List<PaceWords> WORDS =
            Languages.all().stream().map(PaceWords::of).toList();

    private PaceJson() {}

    /// One pupil's pace as one object.
    public static ObjectNode of(PupilPace pace) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("problems", pace.problems());
        if (pace.isEnough()) {
            PupilPace.Altogether all = pace.altogether();
            put(node, all.times(), all.low(), all.high());
            node.put("noise", places(pace.noise()));
            ArrayNode parts = node.putArray("parts");
            pace.parts().stream().filter(PartPace::told).forEach(part -> parts.add(of(part)));
        }
        say(node, words -> words.say(pace));
        return node;
    }

    private static ObjectNode of(PartPace part) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("part", part.part().word());
        put(node, part.times(), part.low(), part.high());
        if (part.steps() > 0) {
            node.put("steps", part.steps());
            node.put("seconds", places(part.seconds()));
        }
        say(node, words -> words.say(part));
        return node;
    }

    private static void put(ObjectNode node, double times, double low, double high) {
        node.put("times", places(times));
        node.put("low", places(low));
        node.put("high", places(high));
    }

    private static void say(ObjectNode node, Function<PaceWords, String> said) {
        ObjectNode say = node.putObject("say");
        WORDS.forEach(words -> say.put(words.language().toLanguageTag(), said.apply(words)));
    }

    private static BigDecimal places(double number) {
        return new BigDecimal(String.format(Locale.ROOT, "%.3f", number));
    }
}
