package tamabako.desk.work;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tamabako.frame.Direction;
import tamabako.frame.Fingering;
import tamabako.frame.Motion;
import tamabako.frame.Step;
import tamabako.frame.Stroke;
import tamabako.frame.Trace;
import tamabako.frame.words.Languages;
import tamabako.frame.words.StepWords;

/// The steps of a trace as JSON, each with what a teacher says to it in every language.
final class StepJson {

    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private StepJson() {}

    static ArrayNode all(Trace trace, Fingering fingering) {
        List<String> states = Worked.states(trace);
        List<List<String>> said = new ArrayList<>();
        for (Locale language : Languages.all()) {
            said.add(StepWords.of(language).say(trace));
        }
        ArrayNode steps = MAKE.arrayNode();
        for (int i = 0; i < trace.steps().size(); i++) {
            ObjectNode step = step(trace.steps().get(i));
            step.put("before", states.get(i)).put("after", states.get(i + 1));
            step.set("strokes", strokes(trace.steps().get(i), fingering));
            ObjectNode say = step.putObject("say");
            for (int language = 0; language < said.size(); language++) {
                say.put(Languages.all().get(language).toLanguageTag(), said.get(language).get(i));
            }
            steps.add(step);
        }
        return steps;
    }

    private static ObjectNode step(Step step) {
        ObjectNode json = MAKE.objectNode();
        json.put("rod", step.rod());
        json.put("digit", step.digit());
        json.put("technique", step.technique().word());
        json.set("cause", CauseJson.of(step.cause()));
        return json;
    }

    private static ArrayNode strokes(Step step, Fingering fingering) {
        ArrayNode strokes = MAKE.arrayNode();
        int number = 0;
        for (Motion motion : step.motions()) {
            number++;
            for (Stroke stroke : motion.strokes()) {
                strokes.add(stroke(stroke, fingering).put("motion", number));
            }
        }
        return strokes;
    }

    private static ObjectNode stroke(Stroke stroke, Fingering fingering) {
        ObjectNode json = MAKE.objectNode();
        switch (stroke) {
            case Stroke.Upper _ -> json.put("bead", "upper").put("beads", 1);
            case Stroke.Lower(_, int beads, _) -> json.put("bead", "lower").put("beads", beads);
        }
        boolean toward = stroke.direction() == Direction.TOWARD_BEAM;
        json.put("direction", toward ? "toward-beam" : "away-from-beam");
        return json.put(
                "finger",
                fingering.finger(stroke).name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
