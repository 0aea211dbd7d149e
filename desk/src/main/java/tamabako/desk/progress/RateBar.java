package tamabako.desk.progress;

/// Where rates stand on a bar from 1 in 10,000 to 1 in 10, each tenfold step as wide as another.
///
/// All in hundredths of the bar.
///
/// @param low where the interval begins
/// @param width how wide it is
/// @param middle where the middle estimate is
/// @param mark where the mark is
public record RateBar(double low, double width, double middle, double mark) {

    private static final double LEAST = 1e-4;
    private static final double DECADES = 3;

    /// @param low rates per step, as all of them
    static RateBar of(double low, double rate, double high, double mark) {
        double from = at(low);
        return new RateBar(from, at(high) - from, at(rate), at(mark));
    }

    private static double at(double rate) {
        double decades = Math.log10(Math.max(rate, LEAST) / LEAST);
        return Math.round(1000 * Math.min(1, decades / DECADES)) / 10.0;
    }
}
