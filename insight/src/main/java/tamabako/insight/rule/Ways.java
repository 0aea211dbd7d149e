package tamabako.insight.rule;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/// The ways in which a column may go under a rule: for each its total, how often the rule was
/// followed and how often not, and how many ways agree in these.
final class Ways {

    /// Where there are more, ways that agree are made one ...
    private static final int MANY = 256;

    /// ... and where there are still more than this, the least likely are dropped.
    private static final int MOST = 3_000;

    private long[] totals = new long[8];
    private int[] followed = new int[8];
    private int[] refused = new int[8];
    private double[] times = new double[8];
    private int size;

    int size() {
        return size;
    }

    long total(int i) {
        return totals[i];
    }

    int followed(int i) {
        return followed[i];
    }

    int refused(int i) {
        return refused[i];
    }

    double times(int i) {
        return times[i];
    }

    void clear() {
        size = 0;
    }

    void add(long total, int follows, int refuses, double agreeing) {
        if (size == totals.length) {
            totals = Arrays.copyOf(totals, 2 * size);
            followed = Arrays.copyOf(followed, 2 * size);
            refused = Arrays.copyOf(refused, 2 * size);
            times = Arrays.copyOf(times, 2 * size);
        }
        totals[size] = total;
        followed[size] = follows;
        refused[size] = refuses;
        times[size] = agreeing;
        size++;
    }

    /// Keeps the number of ways within bounds.
    void trim() {
        if (size > MANY) {
            merge();
        }
        if (size > MOST) {
            keepLikeliest();
        }
    }

    private void merge() {
        int[] order =
                IntStream.range(0, size)
                        .boxed()
                        .sorted(
                                Comparator.<Integer>comparingLong(i -> totals[i])
                                        .thenComparingInt(i -> followed[i])
                                        .thenComparingInt(i -> refused[i]))
                        .mapToInt(Integer::intValue)
                        .toArray();
        Ways merged = new Ways();
        for (int i : order) {
            int last = merged.size - 1;
            if (last >= 0
                    && merged.totals[last] == totals[i]
                    && merged.followed[last] == followed[i]
                    && merged.refused[last] == refused[i]) {
                merged.times[last] += times[i];
            } else {
                merged.add(totals[i], followed[i], refused[i], times[i]);
            }
        }
        take(merged);
    }

    private void keepLikeliest() {
        double[] chances = new double[size];
        Arrays.setAll(chances, i -> times[i] * Following.usual(followed[i], refused[i]));
        int[] order =
                IntStream.range(0, size)
                        .boxed()
                        .sorted(Comparator.<Integer>comparingDouble(i -> -chances[i]))
                        .limit(MOST)
                        .mapToInt(Integer::intValue)
                        .toArray();
        Ways kept = new Ways();
        for (int i : order) {
            kept.add(totals[i], followed[i], refused[i], times[i]);
        }
        take(kept);
    }

    private void take(Ways other) {
        totals = other.totals;
        followed = other.followed;
        refused = other.refused;
        times = other.times;
        size = other.size;
    }
}
