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
    }

    static Motion of(Stroke... strokes) {
        return new Motion(List.of(strokes));
    }
}
