package tamabako.insight.readiness;

import java.util.Arrays;

/// A chance, and how sure it is.
///
/// @param likely the chance, 0 to 1
/// @param low what it is for one in ten of the pupils that this one may be, or less
/// @param high what it is for one in ten of them, or more: `low` to `high` holds eight in ten
public record Chance(double likely, double low, double high) {

    private static final double OUTSIDE = 0.1;

    /// The mean of `chances` of equally likely pupils, with the band that eight in ten lie in.
    static Chance of(double[] chances) {
        double[] sorted = chances.clone();
        Arrays.sort(sorted);
        int out = (int) (OUTSIDE * sorted.length);
        double mean = Arrays.stream(sorted).average().orElse(0);
        return new Chance(
                Math.clamp(mean, 0, 1),
                Math.clamp(sorted[out], 0, 1),
                Math.clamp(sorted[sorted.length - 1 - out], 0, 1));
    }
}
