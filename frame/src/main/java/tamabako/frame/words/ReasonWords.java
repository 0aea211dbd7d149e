package tamabako.frame.words;

import java.util.Map;
import tamabako.frame.Frame;
import tamabako.frame.Played;
import tamabako.frame.Unworkable.Reason;

/// Says why something cannot be done, and how to mend that.
record ReasonWords(Phrases phrases) {

    /// A sum that cannot be worked.
    String why(Reason reason) {
        return switch (reason) {
            case Reason.TooLong(String number, int needed, int limit) ->
                    why(
                            "too-long",
                            Map.of(
                                    "number", number,
                                    "needed", needed,
                                    "limit", limit,
                                    "most", Frame.MOST_RODS));
            case Reason.FrameTooShort(int needed, int rods) ->
                    why(
                            "frame-too-short",
                            Map.of("needed", needed, "rods", rods, "most", Frame.MOST_RODS));
            case Reason.NoSuchFrame(int rods, int limit) ->
                    why("no-such-frame", Map.of("rods", rods, "limit", limit));
            case Reason.NoSuchUnitRod(int unit, int rods) ->
                    why("no-such-unit-rod", Map.of("unit", unit, "rods", rods));
            case Reason.ZeroDivisor(String dividend) ->
                    why("zero-divisor", Map.of("dividend", dividend));
            case Reason.NegativeRoot(String of) -> why("negative-root", Map.of("of", of));
            case Reason.NegativeOperand(String number) ->
                    why("negative-operand", Map.of("number", number));
            case Reason.NoSuchRoot(int degree) -> why("no-such-root", Map.of("degree", degree));
            case Reason.TooManyPlaces(int places, int limit) ->
                    why("too-many-places", Map.of("places", places, "limit", limit));
            case Reason.NoRows() -> why("no-rows", Map.of());
        };
    }

    /// Beads that did not move.
    String why(Played.Refused refused) {
        String rod = new RodNames.ByPlace(phrases).of(refused.stroke().rod());
        return phrases.say(
                switch (refused.because()) {
                    case NO_SUCH_ROD -> "refused.no-such-rod";
                    case NO_BEAD_LEFT_TO_BRING -> "refused.no-bead-left-to-bring";
                    case NO_BEAD_AT_THE_BEAM -> "refused.no-bead-at-the-beam";
                },
                Map.of("rod", rod));
    }

    private String why(String key, Map<String, ?> values) {
        return phrases.say("why." + key, values);
    }
}
