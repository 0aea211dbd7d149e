package tamabako.frame.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tamabako.frame.Frame;
import tamabako.frame.Rod;

/// Reads beads aloud, for those who cannot see them.
record FrameWords(Phrases phrases) {

    /// A rod: what it counts, and which beads are at the beam.
    String read(Rod rod) {
        if (rod.equals(Rod.CLEAR)) {
            return phrases.say("look.clear", Map.of());
        }
        return phrases.say("look", Map.of("count", rod.value(), "beads", beads(rod)));
    }

    /// A frame: what it reads as a whole, then from the left each rod that is not clear.
    String read(Frame frame) {
        List<String> rods = new ArrayList<>();
        for (int number = frame.highest(); number >= frame.lowest(); number--) {
            Rod rod = frame.rod(number);
            if (!rod.equals(Rod.CLEAR)) {
                String place = RodNames.place(phrases, number);
                rods.add(phrases.say("frame.rod", Map.of("place", place, "look", read(rod))));
            }
        }
        if (rods.isEmpty()) {
            return phrases.say("frame.clear", Map.of());
        }
        String between = phrases.say("frame.between", Map.of());
        return phrases.say(
                "frame",
                Map.of(
                        "number", Numbers.shown(frame.value()),
                        "rods", String.join(between, rods)));
    }

    private String beads(Rod rod) {
        if (rod.lower() == 0) {
            return phrases.say("look.upper", rod.upper(), Map.of());
        }
        String lower = phrases.say("look.lower", rod.lower(), Map.of("beads", rod.lower()));
        if (rod.upper() == 0) {
            return lower;
        }
        String upper = phrases.say("look-and.upper", rod.upper(), Map.of());
        return phrases.say("look.both", Map.of("upper", upper, "lower", lower));
    }
}
