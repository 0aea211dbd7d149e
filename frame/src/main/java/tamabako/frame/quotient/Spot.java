package tamabako.frame.quotient;

/// Where a quotient digit stands, and where its products go.
///
/// @param rod the rod of the digit
/// @param units the rod on which the units of its product with the divisor's first digit fall; each
///   next product falls one rod further right
public record Spot(int rod, int units) {

    /// As in division: the first product is taken off the two rods right of the digit.
    public static Spot of(int rod) {
        return new Spot(rod, rod - 2);
    }
}
