package tamabako.problems.making.column;

/// How a pair of bounds is best said.
final class Bound {

    private Bound() {}

    /// `at-least` where there is no upper bound, `at-most` where the lower is 0, `exactly` where
    /// both are the same, else `between`.
    static String of(int least, int most) {
        if (most == HandCondition.ANY) {
            return "at-least";
        }
        if (least == most) {
            return "exactly";
        }
        return least <= 0 ? "at-most" : "between";
    }
}
