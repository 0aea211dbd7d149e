package tamabako.insight.mastery;

import java.util.OptionalInt;

/// How a pupil masters one skill of multiplying and dividing.
///
/// @param skill the skill, of which there was an occasion
/// @param times how often it was called for: the products to be recalled or placed, the digits of
///   quotients to be found
/// @param slips how many slips were made in it as far as the answers show; old ones count less
/// @param rate how often it goes wrong, each time: the middle estimate
/// @param low the rate is above this with chance .95
/// @param high the rate is below this with chance .95
/// @param usual how often it goes wrong for the middle pupil
/// @param mark it may go wrong so often
/// @param good how likely it is that the rate is below the mark, 0 to 1
/// @param statement what may be said
/// @param problemsNeeded about how many problems more until something may be said; empty where
///   something may be said now, and where no number of typical problems would do
public record SkillMastery(
        Skill skill,
        int times,
        double slips,
        double rate,
        double low,
        double high,
        double usual,
        double mark,
        double good,
        Statement statement,
        OptionalInt problemsNeeded) {}
