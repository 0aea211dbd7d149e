package tamabako.desk.progress;

import java.util.Locale;

/// Numbers with as many figures as a teacher reads.
final class Decimals {

    private Decimals() {}

    /// With one figure after the point.
    static String tenths(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    /// A share of 1 in whole hundredths.
    static long hundredths(double share) {
        return Math.round(100 * share);
    }

    /// A chance in whole hundredths: 1 to 99, for nothing is sure.
    static long chance(double chance) {
        return Math.clamp(hundredths(chance), 1, 99);
    }
}
