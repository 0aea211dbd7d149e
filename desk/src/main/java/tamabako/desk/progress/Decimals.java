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
}
