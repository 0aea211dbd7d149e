package tamabako.problems;

import java.util.Optional;
import java.util.OptionalInt;
import tamabako.frame.Rounding;

/// Under what terms a problem is asked and answered.
///
/// @param unit the currency as an ISO 4217 code such as `JPY`, where the numbers are amounts
///   (meisū)
/// @param places decimal places asked for, 0 or more; empty for all there are
/// @param rounding what happens beyond those places; empty for the usual way of the kind of problem
/// @param points marks for a right answer, where the paper gives them
/// @param mode how the problem reaches the pupil
/// @param told how its numbers are told, where they do not stand as a sum
public record Terms(
        Optional<String> unit,
        OptionalInt places,
        Optional<Rounding> rounding,
        OptionalInt points,
        Mode mode,
        Optional<Told> told) {

    /// Plain numbers, exact, on the frame.
    public static final Terms PLAIN =
            new Terms(
                    Optional.empty(),
                    OptionalInt.empty(),
                    Optional.empty(),
                    OptionalInt.empty(),
                    Mode.FRAME,
                    Optional.empty());

    /// The most decimal places that may be asked for.
    public static final int MOST_PLACES = 12;

    public Terms {
        if (places.isPresent() && (places.getAsInt() < 0 || places.getAsInt() > MOST_PLACES)) {
            throw new IllegalArgumentException(
                    "Answers have 0 to %d decimal places, not %d."
                            .formatted(MOST_PLACES, places.getAsInt()));
        }
    }

    public Terms withPlaces(int changed) {
        return new Terms(unit, OptionalInt.of(changed), rounding, points, mode, told);
    }

    public Terms withUnit(String changed) {
        return new Terms(Optional.of(changed), places, rounding, points, mode, told);
    }

    public Terms withRounding(Rounding changed) {
        return new Terms(unit, places, Optional.of(changed), points, mode, told);
    }

    public Terms withPoints(int changed) {
        return new Terms(unit, places, rounding, OptionalInt.of(changed), mode, told);
    }

    public Terms withMode(Mode changed) {
        return new Terms(unit, places, rounding, points, changed, told);
    }

    public Terms withTold(Told changed) {
        return new Terms(unit, places, rounding, points, mode, Optional.of(changed));
    }
}
