package tamabako.frame;

import java.util.List;

/// Strokes that the hand makes together: one stroke, or two on one rod.
///
/// Two strokes go together when six to nine are set (thumb and forefinger pinch), and when the
/// upper bead and the lower beads move the same way (one sweep). Common practice after Kojima, The
/// Japanese Abacus (1954).
public record Motion(List<Stroke> strokes) {

    public Motion {
        strokes = List.copyOf(strokes);
        if (strokes.isEmpty() || strokes.size() > 2) {
            throw new IllegalArgumentException(
                    "A motion has one or two strokes, not %d.".formatted(strokes.size()));
        }
        if (strokes.size() == 2 && !together(strokes.getFirst(), strokes.getLast())) {
            throw new IllegalArgumentException(
                    "Only an upper and a lower stroke on one rod go together, not %s."
                            .formatted(strokes));
        }
    }

    /// The rod that the beads slide on.
    public int rod() {
        return strokes.getFirst().rod();
    }

    private static boolean together(Stroke first, Stroke second) {
        return first.rod() == second.rod()
                && first instanceof Stroke.Upper != second instanceof Stroke.Upper;
    }

    static Motion of(Stroke... strokes) {
        return new Motion(List.of(strokes));
    }
}
