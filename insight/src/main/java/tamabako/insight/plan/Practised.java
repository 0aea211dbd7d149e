package tamabako.insight.plan;

/// What a pupil has practised since the answers that tell of the pupil: they are of the past, and
/// what was practised meanwhile goes better by now.
///
/// Problems are added in the order they were worked. For each strand the answers tell of the pupil
/// as of their mean place, weighed by the slips that were to be expected in each.
public final class Practised {

    /// No more is counted, for how practice tells in the long run is not known. With a lesser bound
    /// a move that is met in every row is taken to go wrong long after it was learned.
    private static final double MOST = 1_000;

    private final double[] times = new double[Load.SIZE];
    private final double[] expected = new double[Load.SIZE];
    private final double[] placed = new double[Load.SIZE];

    /// Adds a problem that was worked.
    public void add(Load load) {
        addWithoutLearning(load);
        for (int strand = 0; strand < Load.SIZE; strand++) {
            times[strand] += load.times().get(strand);
        }
    }

    /// Adds a problem that was worked and from which nothing was learned, as in a test.
    public void addWithoutLearning(Load load) {
        for (int strand = 0; strand < Load.SIZE; strand++) {
            expected[strand] += load.expected().get(strand);
            placed[strand] += load.expected().get(strand) * times[strand];
        }
    }

    /// Which part of the slips that the answers tell of is left by now, as a [Load] has them.
    double[] left(Learning learning) {
        double[] left = new double[Load.SIZE];
        for (int strand = 0; strand < Load.SIZE; strand++) {
            double place = expected[strand] == 0 ? 0 : placed[strand] / expected[strand];
            double since = Math.min(MOST, Math.max(0, times[strand] - place));
            left[strand] = 1 - learning.gone(since);
        }
        return left;
    }
}
