package tamabako.insight.mastery;

import java.util.OptionalInt;
import tamabako.insight.slip.Move;

/// How a pupil masters one move.
///
/// @param move the move
/// @param steps how often the pupil has made it
/// @param slips how many slips were made in it as far as the answers show; old ones count less
/// @param rate how often it goes wrong, per step: the middle estimate; 0 where neither the pupil
///   has met it nor the problems ask for it
/// @param low the rate is above this with chance .95
/// @param high the rate is below this with chance .95
/// @param usual how often it goes wrong for the middle pupil
/// @param mark it may go wrong so often
/// @param good how likely it is that the rate is below the mark, 0 to 1
/// @param statement what may be said
/// @param problemsNeeded about how many problems more until something may be said; empty where
///   something may be said now, and where no number of typical problems would do
public record MoveMastery(
        Move move,
        int steps,
        double slips,
        double rate,
        double low,
        double high,
        double usual,
        double mark,
        double good,
        Statement statement,
        OptionalInt problemsNeeded) {

    /// Whether there is any rate to tell: the pupil has met the move, or the typical problems have
    /// it.
    public boolean isKnown() {
        return rate > 0;
    }
}
