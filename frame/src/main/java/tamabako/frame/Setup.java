package tamabako.frame;

import java.util.OptionalInt;

/// The frame that a sum is worked on, and the habits of the hand.
///
/// @param kind the frame kind
/// @param rods how many rods, 1 to 31; empty for as many as the sum needs
/// @param unit which rod from the left, counted from 1 (A), is the unit rod; empty for where the
///   procedure puts it
/// @param habits how the hand works
public record Setup(FrameKind kind, OptionalInt rods, OptionalInt unit, Habits habits) {

    /// A modern frame with as many rods as the sum needs, worked in the common way.
    public static final Setup COMMON =
            new Setup(FrameKind.MODERN, OptionalInt.empty(), OptionalInt.empty(), Habits.COMMON);

    public Setup {
        if (rods.isPresent() && (rods.getAsInt() < 1 || rods.getAsInt() > Frame.MOST_RODS)) {
            throw new Unworkable(
                    new Unworkable.Reason.NoSuchFrame(rods.getAsInt(), Frame.MOST_RODS));
        }
        if (unit.isPresent()
                && (unit.getAsInt() < 1 || unit.getAsInt() > rods.orElse(Frame.MOST_RODS))) {
            throw new Unworkable(
                    new Unworkable.Reason.NoSuchUnitRod(
                            unit.getAsInt(), rods.orElse(Frame.MOST_RODS)));
        }
    }

    /// This setup on a frame of so many rods.
    ///
    /// @throws Unworkable if no frame has so many
    public Setup withRods(int changed) {
        return new Setup(kind, OptionalInt.of(changed), unit, habits);
    }

    /// This setup with its unit rod counted from the left, from 1.
    ///
    /// @throws Unworkable if the frame has no such rod
    public Setup withUnit(int changed) {
        return new Setup(kind, rods, OptionalInt.of(changed), habits);
    }

    /// This setup on a frame of another kind.
    public Setup with(FrameKind changed) {
        return new Setup(changed, rods, unit, habits);
    }

    /// This setup worked with other habits.
    public Setup with(Habits changed) {
        return new Setup(kind, rods, unit, changed);
    }
}
