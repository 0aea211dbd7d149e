package tamabako.insight.readiness;

import java.util.Arrays;
import java.util.List;

/// The chance of every score of a section, worked in its order against the clock.
///
/// `P(score = s) = sum over m of [P(T(1..m) <= C) - P(T(1..m+1) <= C)] * PB(m, s)`: the problems
/// are worked one after another, each taking a lognormal time; those done within the limit C count,
/// and PB(m, s) is the chance that the first m of them bring s points.
public final class ScoreChances {

    private final double[] chances;
    private final double timeRunsOut;

    private ScoreChances(double[] chances, double timeRunsOut) {
        this.chances = chances;
        this.timeRunsOut = timeRunsOut;
    }

    /// One problem of the section.
    ///
    /// @param right the chance that it is right if it is worked, 0 to 1
    /// @param points what it is worth, 1 or more
    /// @param seconds its median time, above 0
    public record Item(double right, int points, double seconds) {

        public Item {
            if (!(right >= 0 && right <= 1) || points < 1 || !(seconds > 0)) {
                throw new IllegalArgumentException(
                        "No problem is right with the chance %s, worth %d points and takes %s s."
                                .formatted(right, points, seconds));
            }
        }
    }

    /// The chances of a section of `items`.
    ///
    /// @param spread the standard deviation of the natural logarithm of each time, 0 or more
    /// @param limit the seconds there are, above 0; infinity for no limit
    public static ScoreChances of(List<Item> items, double spread, double limit) {
        double[] means = items.stream().mapToDouble(item -> Math.log(item.seconds())).toArray();
        double[] right = items.stream().mapToDouble(Item::right).toArray();
        int[] points = items.stream().mapToInt(Item::points).toArray();
        double[] going = new double[items.size()];
        Arrays.fill(going, 1);
        if (limit < Double.POSITIVE_INFINITY) {
            double log = Math.log(limit);
            TimeSums.of(means, spread, log).going(log, going, going.length);
        }
        ScoreSums sums = new ScoreSums(Arrays.stream(points).sum());
        sums.work(right, points, going, going.length);
        double[] chances = new double[sums.most() + 1];
        sums.copy(chances, 0);
        return new ScoreChances(chances, 1 - Arrays.stream(going).reduce(1, (a, b) -> a * b));
    }

    /// The highest score.
    public int most() {
        return chances.length - 1;
    }

    /// The chance of exactly so many points.
    public double chance(int score) {
        return score < 0 || score > most() ? 0 : chances[score];
    }

    /// The chance of so many points or more.
    public double atLeast(int score) {
        double sum = 0;
        for (int one = most(); one >= Math.max(0, score); one--) {
            sum += chances[one];
        }
        return sum;
    }

    /// The points to be expected.
    public double mean() {
        double sum = 0;
        for (int score = 1; score <= most(); score++) {
            sum += score * chances[score];
        }
        return sum;
    }

    /// The chance that the last problem is not done in time.
    public double timeRunsOut() {
        return timeRunsOut;
    }
}
