package tamabako.insight.mastery;

import java.util.OptionalInt;

/// How a pupil masters one kind of problem.
///
/// @param kind the kind: `column`, `product`, `quotient` or `root`
/// @param answers how many answers the pupil gave
/// @param right how many of them are right
/// @param chance the share that comes out right: the middle estimate, old answers counting less
/// @param low the share is above this with chance .95
/// @param high the share is below this with chance .95
/// @param good how likely it is that the share is at least [Demand#RIGHT]
/// @param statement what may be said
/// @param problemsNeeded about how many problems more until something may be said; empty where
///   something may be said now, and where a thousand would not do
public record KindMastery(
        String kind,
        int answers,
        int right,
        double chance,
        double low,
        double high,
        double good,
        Statement statement,
        OptionalInt problemsNeeded) {}
