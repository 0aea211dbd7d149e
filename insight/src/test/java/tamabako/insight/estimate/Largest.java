package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/// The largest difference between what was found and what should be.
final class Largest {

    private double difference;
    private String where = "";

    private Largest() {}

    /// Differences of pairs; both lists have one length, and something in it.
    static Largest between(List<Double> found, List<Double> expected) {
        assertThat(found).hasSameSizeAs(expected).isNotEmpty();
        Largest largest = new Largest();
        for (int i = 0; i < found.size(); i++) {
            largest.note(found.get(i) - expected.get(i), i, found.get(i), expected.get(i));
        }
        return largest;
    }

    /// Differences as shares of what should be.
    static Largest shareBetween(List<Double> found, List<Double> expected) {
        assertThat(found).hasSameSizeAs(expected).isNotEmpty();
        Largest largest = new Largest();
        for (int i = 0; i < found.size(); i++) {
            double all = expected.get(i) == 0 ? 1 : expected.get(i);
            largest.note((found.get(i) - expected.get(i)) / all, i, found.get(i), expected.get(i));
        }
        return largest;
    }

    private void note(double difference, int at, double found, double expected) {
        // Written so that a difference that is no number counts as the largest.
        if (!(Math.abs(difference) <= this.difference)) {
            this.difference = Math.abs(difference);
            where = "number %d is %s instead of %s".formatted(at, found, expected);
        }
    }

    /// Fails if any difference is greater than that.
    void isAtMost(double tolerance) {
        assertThat(difference).as(where).isLessThanOrEqualTo(tolerance);
    }
}
