package tamabako.frame.root;

import tamabako.frame.Frame;
import tamabako.frame.Room;
import tamabako.frame.Setup;
import tamabako.frame.Unworkable;

/// Where the numbers of a root stand. Rod 0 holds the root's unit digit.
///
/// @param sum what is asked
/// @param distance rods from the root's first digit to the units of the radicand's first group
/// @param left what is needed at the left
/// @param lowest the lowest rod that the working may come to need
record RootLayout(RootSum sum, int distance, Left left, int lowest) {

    /// Rods from the unit rod to the left, that rod included.
    ///
    /// @param fewest the fewest that this layout can do with
    /// @param spare how many more are taken if there is room
    /// @param most the fewest that the whole root may come to need
    record Left(int fewest, int spare, int most) {}

    /// The rod of the units of the radicand's first group.
    int groupRod() {
        return sum.firstRod() - distance;
    }

    /// The rod of the radicand's units, from which its places count.
    int radicandUnit() {
        return groupRod() - sum.degree() * sum.firstRod();
    }

    /// The lowest rod that the working starts from: the radicand's last digit or the unit rod.
    int lastSet() {
        return Math.min(0, radicandUnit() + sum.radicand().lastPlace());
    }

    /// A clear frame, with all the rods there can be at the right: how many the root comes to need
    /// is known only as it is worked. Spare rods are taken if there is room for the longest
    /// working.
    ///
    /// @throws Unworkable if the frame is too short, or its unit rod leaves no room
    Frame clear(Setup setup) {
        int rods = setup.rods().orElse(Frame.MOST_RODS);
        if (left.fewest() - lastSet() > rods) {
            throw tooShort(setup);
        }
        int spare = left.spare() + longest() <= rods ? left.spare() : 0;
        return new Room(sum.shown(), left.fewest(), spare, -lastSet(), Frame.MOST_RODS)
                .clear(setup);
    }

    /// How many rods the whole root may come to need.
    private int longest() {
        return left.most() - Math.min(lowest, lastSet());
    }

    /// That the working runs off the right end of the frame, because that is too short or because
    /// the unit rod asked for is too far right.
    Unworkable tooShort(Setup setup) {
        int rods = setup.rods().orElse(Frame.MOST_RODS);
        return new Unworkable(
                setup.unit().isPresent() && longest() <= rods
                        ? new Unworkable.Reason.NoSuchUnitRod(setup.unit().getAsInt(), rods)
                        : new Unworkable.Reason.TooLong(sum.shown(), longest(), rods));
    }
}
