package tamabako.frame;

import java.util.ArrayList;
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

    /// How the hand gets from one look of a rod to another.
    static List<Motion> between(int rod, Rod before, Rod after) {
        int upper = after.upper() - before.upper();
        int lower = after.lower() - before.lower();
        List<Motion> motions = new ArrayList<>();
        if (lower == 0) {
            pushUpper(motions, rod, upper);
        } else if (upper == 0 || (upper < 0 && lower < 0)) {
            // Taking six to nine off: the ones down first, then the five up.
            motions.add(of(lower(rod, lower)));
            pushUpper(motions, rod, upper);
        } else {
            Stroke five = upper(rod, upper);
            Stroke ones = lower(rod, lower);
            // One sweep of the forefinger takes the five down, then the ones down. Otherwise the
            // thumb leads: a pinch sets six to nine, and both rise together to give back a five.
            motions.add(lower < 0 ? of(five, ones) : of(ones, five));
            pushUpper(motions, rod, upper - Integer.signum(upper));
        }
        return motions;
    }

    private static void pushUpper(List<Motion> motions, int rod, int beads) {
        for (int i = 0; i < Math.abs(beads); i++) {
            motions.add(of(upper(rod, beads)));
        }
    }

    private static Stroke upper(int rod, int change) {
        return new Stroke.Upper(rod, direction(change));
    }

    private static Stroke lower(int rod, int change) {
        return new Stroke.Lower(rod, Math.abs(change), direction(change));
    }

    private static Direction direction(int change) {
        return change > 0 ? Direction.TOWARD_BEAM : Direction.AWAY_FROM_BEAM;
    }
}
