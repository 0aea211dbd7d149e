package tamabako.insight.readiness;

import java.util.Arrays;

/// Works out the chance of every score of a row of problems, again and again without making
/// objects. One thread at a time may use it.
///
/// The score of the problems from the i-th on, once the one before is done, is 0 if the clock stops
/// the pupil, else the points of the i-th if it is right, and in both cases the score of those
/// after it. So one pass from the last problem to the first is enough: that is the weighted
/// Poisson-binomial distribution of the first m problems, mixed over the m at which time runs out,
/// in the time of one. All terms are added and none taken, so that even the smallest chance keeps
/// its figures.
public final class ScoreSums {

    private double[] chances;
    private double[] next;
    private int most;

    /// Sums of up to `most` points; more room is made where it is needed.
    public ScoreSums(int most) {
        this.chances = new double[most + 1];
        this.next = new double[most + 1];
        this.chances[0] = 1;
    }

    /// Works out the scores of problems that are all reached.
    ///
    /// @param right the chance of each problem to be right, 0 to 1
    /// @param points what each is worth, 1 or more
    /// @param count how many problems there are
    public void work(double[] right, int[] points, int count) {
        start(1);
        for (int i = count - 1; i >= 0; i--) {
            put(1 - right[i], right[i], 0, points[i]);
        }
    }

    /// Works out the scores of problems that are worked against the clock in their order.
    ///
    /// @param going the chance that each is done in time once the one before it was, 0 to 1
    public void work(double[] right, int[] points, double[] going, int count) {
        start(1);
        for (int i = count - 1; i >= 0; i--) {
            put(going[i] * (1 - right[i]), going[i] * right[i], 1 - going[i], points[i]);
        }
    }

    /// Begins anew with no problem at all.
    void startAtNothing() {
        start(1);
    }

    /// Adds a problem worth 1 that is reached whatever came before.
    ///
    /// @param right the chance that it is right, 0 to 1
    void add(double right) {
        put(1 - right, right, 0, 1);
    }

    private void start(double nothing) {
        most = 0;
        chances[0] = nothing;
    }

    private void put(double wrong, double right, double stopped, int points) {
        int top = most + points;
        if (top >= next.length) {
            chances = Arrays.copyOf(chances, 2 * top + 1);
            next = new double[2 * top + 1];
        }
        double[] from = chances;
        double[] to = next;
        int low = Math.min(points, most + 1);
        for (int score = 0; score < low; score++) {
            to[score] = wrong * from[score];
        }
        for (int score = low; score < points; score++) {
            to[score] = 0;
        }
        for (int score = points; score <= most; score++) {
            to[score] = wrong * from[score] + right * from[score - points];
        }
        for (int score = Math.max(points, most + 1); score <= top; score++) {
            to[score] = right * from[score - points];
        }
        to[0] += stopped;
        chances = to;
        next = from;
        most = top;
    }

    /// The highest score.
    public int most() {
        return most;
    }

    /// The chance of exactly `score` points, 0 to [#most()].
    public double chance(int score) {
        return score > most ? 0 : chances[score];
    }

    /// The chance of `score` points or more.
    public double atLeast(int score) {
        double sum = 0;
        for (int one = most; one >= Math.max(0, score); one--) {
            sum += chances[one];
        }
        return sum;
    }

    /// Copies the chances of 0 points and up into `to` from `from` on.
    void copy(double[] to, int from) {
        System.arraycopy(chances, 0, to, from, most + 1);
    }
}
