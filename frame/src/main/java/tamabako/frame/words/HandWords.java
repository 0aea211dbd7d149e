package tamabako.frame.words;

import java.util.Map;
import tamabako.frame.Direction;
import tamabako.frame.Fingering;
import tamabako.frame.Motion;
import tamabako.frame.Stroke;

/// Says which finger moves which beads.
record HandWords(Phrases phrases, Fingering fingering) {

    /// One motion of the hand; where one finger makes both strokes, one after the other.
    String say(Motion motion) {
        Stroke first = motion.strokes().getFirst();
        String finger = finger(first);
        if (motion.strokes().size() == 1) {
            return phrases.say(
                    "motion.one", Map.of("finger", finger, "stroke", beads("stroke", first)));
        }
        Stroke second = motion.strokes().getLast();
        boolean same = fingering.finger(first) == fingering.finger(second);
        return phrases.say(
                same ? "motion.one-finger" : "motion.two-fingers",
                Map.of(
                        "finger", finger,
                        "stroke", beads("stroke-and", first),
                        "other", finger(second),
                        "second", beads("stroke", second)));
    }

    private String finger(Stroke stroke) {
        return phrases.say(
                switch (fingering.finger(stroke)) {
                    case THUMB -> "finger.thumb";
                    case FOREFINGER -> "finger.forefinger";
                    case MIDDLE_FINGER -> "finger.middle-finger";
                },
                Map.of());
    }

    private String beads(String key, Stroke stroke) {
        boolean toward = stroke.direction() == Direction.TOWARD_BEAM;
        return switch (stroke) {
            case Stroke.Upper _ ->
                    phrases.say(key + (toward ? ".upper.down" : ".upper.up"), Map.of());
            case Stroke.Lower(_, int beads, _) ->
                    phrases.say(
                            key + (toward ? ".lower.up" : ".lower.down"),
                            beads,
                            Map.of("beads", beads));
        };
    }
}
