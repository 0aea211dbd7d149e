package tamabako.insight.readiness;

/// How long the first so many problems of a row take together, each a lognormal time of its own.
sealed interface TimeSums permits MatchedSums, GridSums {

    /// Up to this standard deviation of the logarithm of one time, the sum is near enough to
    /// lognormal: the chance to pass is then off by less than 2e-4.
    double NEARLY_LOGNORMAL = 0.3;

    /// The chance that the first `count` problems, 1 or more, take no longer than `limit`.
    ///
    /// @param limit the natural logarithm of the seconds
    double within(int count, double limit);

    /// The sums of times with these means of their logarithms and one standard deviation.
    ///
    /// @param longest the longest time that will be asked for, as the logarithm of its seconds
    static TimeSums of(double[] means, double spread, double longest) {
        return spread <= NEARLY_LOGNORMAL
                ? new MatchedSums(means, spread)
                : new GridSums(means, spread, longest);
    }

    /// Fills `going` with the chance of each problem to be done in time once the one before was.
    default void going(double limit, double[] going, int count) {
        double before = 1;
        for (int i = 0; i < count; i++) {
            double here = Math.min(before, within(i + 1, limit));
            going[i] = before == 0 ? 0 : here / before;
            before = here;
        }
    }
}
