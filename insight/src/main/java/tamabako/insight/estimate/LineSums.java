package tamabako.insight.estimate;

/// What one person's points (x, y) come to: all that straight lines need.
///
/// @param n how many points
public record LineSums(double n, double x, double xx, double y, double xy, double yy) {

    /// No points yet.
    public static final LineSums NONE = new LineSums(0, 0, 0, 0, 0, 0);

    /// One point more.
    public LineSums with(double atX, double atY) {
        return new LineSums(
                n + 1, x + atX, xx + atX * atX, y + atY, xy + atX * atY, yy + atY * atY);
    }
}
