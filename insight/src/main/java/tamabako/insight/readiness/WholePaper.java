package tamabako.insight.readiness;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// So much has to be reached in the whole paper.
///
/// A section's table has the chance of every number of right answers together with being done with
/// the section, and then of every number with which the clock stops the pupil in it.
final class WholePaper implements Goals {

    private final List<Outline.Part> parts;
    private final int[] least;
    private final int[] worth;
    private final int[] counts;
    private final int most;
    private final int unit;
    private final Optional<Duration> time;

    WholePaper(List<Outline.Part> parts, int[] points, Optional<Duration> time) {
        this.parts = parts;
        this.time = time;
        this.unit =
                parts.stream().mapToInt(part -> part.section().points()).reduce(0, this::divisor);
        this.worth = parts.stream().mapToInt(part -> part.section().points() / unit).toArray();
        this.counts = parts.stream().mapToInt(part -> part.tasks().size()).toArray();
        this.least = Arrays.stream(points).map(one -> Math.ceilDiv(one, unit)).toArray();
        int sum = 0;
        for (int s = 0; s < worth.length; s++) {
            sum += worth[s] * counts[s];
        }
        this.most = sum;
    }

    private int divisor(int one, int other) {
        return other == 0 ? one : divisor(other, one % other);
    }

    @Override
    public int count() {
        return least.length;
    }

    @Override
    public boolean whole() {
        return true;
    }

    @Override
    public Optional<Duration> time() {
        return time;
    }

    @Override
    public int most() {
        return most;
    }

    @Override
    public int width(int section) {
        return 2 * (counts[section] + 1);
    }

    @Override
    public SectionTable.Reading reading(int section) {
        int count = counts[section];
        int[] ones = Goals.ones(count);
        return (sums, right, going, into, at) -> {
            sums.work(right, ones, going, count);
            sums.copy(into, at);
            if (time.isPresent()) {
                sums.workStopped(right, ones, going, count);
                sums.copy(into, at + count + 1);
                for (int i = 0; i <= count; i++) {
                    into[at + i] = Math.max(0, into[at + i] - into[at + count + 1 + i]);
                }
            }
        };
    }

    /// From the last section to the first: what comes after a section counts only if it was done.
    @Override
    public void add(
            SectionTable[] tables,
            int[] at,
            double weight,
            double[] chances,
            double[] scores,
            double[] spare) {
        double[] after = scores;
        double[] now = spare;
        after[0] = 1;
        int top = 0;
        for (int s = tables.length - 1; s >= 0; s--) {
            double[] numbers = tables[s].numbers();
            int next = top + worth[s] * counts[s];
            Arrays.fill(now, 0, next + 1, 0);
            for (int right = 0; right <= counts[s]; right++) {
                double done = numbers[at[s] + right];
                int from = right * worth[s];
                for (int score = 0; score <= top; score++) {
                    now[from + score] += done * after[score];
                }
                now[from] += numbers[at[s] + counts[s] + 1 + right];
            }
            double[] kept = after;
            after = now;
            now = kept;
            top = next;
        }
        double sum = 0;
        int goal = least.length - 1;
        for (int score = top; score >= 0 && goal >= 0; score--) {
            while (goal >= 0 && least[goal] > score) {
                chances[goal--] += weight * sum;
            }
            sum += after[score];
        }
        while (goal >= 0) {
            chances[goal--] += weight * sum;
        }
    }

    @Override
    public void addSection(
            SectionTable table, int section, int goal, int at, double weight, double[] told) {
        double mean = 0;
        double[] numbers = table.numbers();
        for (int right = 0; right <= counts[section]; right++) {
            mean += right * (numbers[at + right] + numbers[at + counts[section] + 1 + right]);
        }
        told[0] += weight;
        told[1] += weight * mean * parts.get(section).section().points();
    }
}
