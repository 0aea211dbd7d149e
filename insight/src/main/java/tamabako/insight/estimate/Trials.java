package tamabako.insight.estimate;

import java.util.Arrays;

/// What came of trials, and what was known beforehand: a row of features for each group of trials
/// alike, how many there were and how many came out well.
///
/// Rows lie one after the other in one array, so that many fit near the processor. For the same
/// reason there is an even number of features and a multiple of four of rows: what is missing is
/// filled up with features of zero and groups without trials, which change nothing.
public final class Trials {

    private static final int ROWS_AT_ONCE = 4;

    private final int groups;
    private final int each;
    private final double[] features;
    private final double[] well;
    private final double[] trials;

    private Trials(int groups, int each) {
        this.groups = groups;
        this.each = each;
        int filled = (groups + ROWS_AT_ONCE - 1) / ROWS_AT_ONCE * ROWS_AT_ONCE;
        features = new double[filled * width()];
        well = new double[filled];
        trials = new double[filled];
    }

    /// Groups of trials.
    ///
    /// @param rows features of each group, all of one length; a constant is a feature like others
    /// @param well how many of each group came out well; not below zero
    /// @param trials how many there were in each group; above zero
    public static Trials of(double[][] rows, double[] well, double[] trials) {
        if (rows.length == 0 || rows.length != well.length || rows.length != trials.length) {
            throw new IllegalArgumentException(
                    "%d rows, %d results, %d numbers of trials."
                            .formatted(rows.length, well.length, trials.length));
        }
        int each = rows[0].length;
        Trials all = new Trials(rows.length, each);
        for (int i = 0; i < rows.length; i++) {
            if (rows[i].length != each || !(0 <= well[i] && well[i] <= trials[i])) {
                throw new IllegalArgumentException(
                        "Group %d has %d features, and %s of %s came out well."
                                .formatted(i, rows[i].length, well[i], trials[i]));
            }
            System.arraycopy(rows[i], 0, all.features, i * all.width(), each);
            all.well[i] = well[i];
            all.trials[i] = trials[i];
        }
        return all;
    }

    /// Single trials; `well[i]` is one or zero.
    public static Trials of(double[][] rows, double[] well) {
        double[] once = new double[rows.length];
        Arrays.fill(once, 1);
        return of(rows, well, once);
    }

    int groups() {
        return groups;
    }

    /// Groups with those that fill up.
    int filled() {
        return well.length;
    }

    int each() {
        return each;
    }

    /// Features with the one that may fill up.
    int width() {
        return each + each % 2;
    }

    double well(int group) {
        return well[group];
    }

    double trials(int group) {
        return trials[group];
    }

    /// Where the rows lie; not to be changed.
    double[] features() {
        return features;
    }
}
