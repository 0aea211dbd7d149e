package tamabako.frame;

/// How many rods a sum asks for on each side: from its unit rod to the left, that rod included, and
/// right of it. Extra rods beyond what a sum asks for stay clear at the right end.
///
/// 306 × 4 asks for 7 rods at the left (the multiplier, a gap, five rods from the multiplicand to
/// the unit rod), gladly takes one more, and needs none at the right.
///
/// @param sum the sum as it is shown to people
/// @param left the fewest rods at the left
/// @param spareLeft how many more are taken at the left if there is room
/// @param right the fewest rods at the right
/// @param spareRight how many more are taken at the right if there is room
public record Room(String sum, int left, int spareLeft, int right, int spareRight) {

    /// A clear frame on which the sum can be worked.
    ///
    /// @throws Unworkable if the frame asked for is too short, or its unit rod leaves no room
    public Frame clear(Setup setup) {
        int most = setup.rods().orElse(Frame.MOST_RODS);
        if (left + right > most) {
            throw new Unworkable(new Unworkable.Reason.TooLong(sum, left + right, most));
        }
        int unit = setup.unit().orElse(Math.min(left + spareLeft, most - right));
        if (unit < left || unit + right > most) {
            throw new Unworkable(new Unworkable.Reason.NoSuchUnitRod(unit, most));
        }
        int rods = setup.rods().orElse(Math.min(most, unit + right + spareRight));
        return Frame.clear(setup.kind(), unit - rods, unit - 1);
    }
}
