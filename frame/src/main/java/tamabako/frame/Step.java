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
        Technique due =
                digit > 0 ? Technique.ofAdding(before, digit) : Technique.ofTaking(before, -digit);
        if (technique != due) {
            throw new IllegalArgumentException(
                    "%+d on %s is %s, not %s.".formatted(digit, before, due, technique));
        }
        if (after.value() - before.value() != change(digit, technique)) {
            throw new IllegalArgumentException(
                    "%+d by %s does not make %s of %s.".formatted(digit, technique, after, before));
        }
        Rod moved = before;
        for (Motion motion : motions) {
            moved = moved(rod, moved, motion);
        }
        if (!moved.equals(after)) {
            throw new IllegalArgumentException(
                    "These motions lead from %s to %s, not to %s.".formatted(before, moved, after));
        }
    }

    /// By how much the count of the step's own rod changes: the digit, less the ten that is carried
    /// or borrowed.
    public int change() {
        return change(digit, technique);
    }

    private static int change(int digit, Technique technique) {
        return technique.passesTen() ? digit - 10 * Integer.signum(digit) : digit;
    }

    private static Rod moved(int rod, Rod held, Motion motion) {
        if (motion.rod() != rod) {
            throw new IllegalArgumentException(
                    "A step moves beads on its own rod %d, not on %d."
                            .formatted(rod, motion.rod()));
        }
        Rod moved = held;
        for (Stroke stroke : motion.strokes()) {
            moved = moved.after(stroke);
        }
        return moved;
    }

    /// All strokes, in order.
    public List<Stroke> strokes() {
        return motions.stream().flatMap(motion -> motion.strokes().stream()).toList();
    }
}
