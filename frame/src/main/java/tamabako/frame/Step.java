package tamabako.frame;

import java.util.List;

/// One intended change on one rod: `digit` is added (positive) or taken (negative).
///
/// A step moves beads on its own rod only. Where the technique passes ten, the one that is carried
/// or borrowed is a step of its own, whose cause is [Cause.Carry] or [Cause.Borrow]; so a step of
/// +8 by ten-complement takes two off its rod.
///
/// @param rod the rod, numbered by its power of ten
/// @param digit -9 to 9, never 0
/// @param technique how it is done
/// @param cause what asked for it
/// @param before the rod before
/// @param after the rod after
/// @param motions the moves of the hand, in order
public record Step(
        int rod,
        int digit,
        Technique technique,
        Cause cause,
        Rod before,
        Rod after,
        List<Motion> motions) {

    public Step {
        motions = List.copyOf(motions);
        if (digit == 0 || digit < -9 || digit > 9) {
            throw new IllegalArgumentException(
                    "A step adds or takes 1 to 9, not %d.".formatted(digit));
        }
    }

    /// All strokes, in order.
    public List<Stroke> strokes() {
        return motions.stream().flatMap(motion -> motion.strokes().stream()).toList();
    }
}
