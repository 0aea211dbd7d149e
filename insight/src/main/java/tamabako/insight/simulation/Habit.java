package tamabako.insight.simulation;

/// A wrong rule that a simulated pupil has.
///
/// @param part what it is about
/// @param adding where something is added to the rod, or where it is taken
/// @param digit the digit that is added or taken
/// @param used what is moved instead of the complement; below zero for the wrong way
/// @param followed how often it is followed where it applies, 0 to 1
public record Habit(Part part, boolean adding, int digit, int used, double followed) {

    /// What a wrong rule is about.
    public enum Part {
        TEN_COMPLEMENT,
        FIVE_COMPLEMENT,
        FIVE_BEAD,
        CARRY,
        RUNNING_CARRY
    }

    /// No wrong rule.
    public static final Habit NONE = new Habit(Part.CARRY, true, 0, 0, 0);

    boolean isOver(Part asked, boolean adds) {
        return followed > 0 && part == asked && adding == adds;
    }
}
