package tamabako.insight.slip;

import java.math.BigDecimal;

/// Answers that no known slip stands behind: spread evenly over all numbers of their length.
final class Background {

    private Background() {}

    /// The chance of `written` among all answers of its length.
    static double evenly(BigDecimal written) {
        int digits = Math.max(written.precision(), written.scale() + 1);
        return digits == 1 ? 0.1 : 1 / (9 * Math.pow(10, digits - 1.0));
    }
}
