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
    public FirstProblems.Reading reading(int section) {
        int columns = counts[section] + 1;
        return new FirstProblems.Reading() {
            @Override
            public int columns() {
                return columns;
            }

            @Override
            public void read(ScoreSums scores, double[] into, int at) {
                scores.copy(into, at);
            }
        };
    }

    @Override
    public SectionTable.Putting putting(int section) {
        int columns = counts[section] + 1;
        return new SectionTable.Putting() {
            @Override
            public int width() {
                return time.isPresent() ? 2 * columns : columns;
            }

            @Override
            public void put(double[] done, double[] stopped, double[] into, int at) {
                if (time.isPresent()) {
                    System.arraycopy(done, 0, into, at, columns);
                    System.arraycopy(stopped, 0, into, at + columns, columns);
                } else {
                    for (int i = 0; i < columns; i++) {
                        into[at + i] = done[i] + stopped[i];
                    }
                }
            }
        };
    }

    @Override
    public void add(
            SectionTable[] tables,
            int[] at,
            double weight,
            double[] chances,
            double[] scores,
            double[] spare) {
        double[] reached = reached(tables, at, scores, spare);
        for (int goal = 0; goal < least.length; goal++) {
            chances[goal] += weight * first(tables[0].numbers(), at[0], goal, reached);
        }
    }

    @Override
    public double chance(
            SectionTable[] tables, int[] at, int goal, double[] scores, double[] spare) {
        double[] reached = reached(tables, at, scores, spare);
        return first(tables[0].numbers(), at[0], goal, reached);
    }

    /// The chance of each score or more in all sections but the first, once that one is done. They
    /// go from the last section to the first: what comes after a section counts only if it was
    /// done.
    private double[] reached(SectionTable[] tables, int[] at, double[] scores, double[] spare) {
        double[] after = scores;
        double[] now = spare;
        after[0] = 1;
        int top = 0;
        for (int s = tables.length - 1; s > 0; s--) {
            double[] numbers = tables[s].numbers();
            int next = top + worth[s] * counts[s];
            Arrays.fill(now, 0, next + 1, 0);
            for (int right = 0; right <= counts[s]; right++) {
                double done = numbers[at[s] + right];
                int from = right * worth[s];
                for (int score = 0; score <= top; score++) {
                    now[from + score] += done * after[score];
                }
                now[from] += stopped(numbers, at[s], s, right);
            }
            double[] kept = after;
            after = now;
            now = kept;
            top = next;
        }
        for (int score = top - 1; score >= 0; score--) {
            after[score] += after[score + 1];
        }
        Arrays.fill(after, top + 1, after.length, 0);
        return after;
    }

    private double stopped(double[] numbers, int at, int section, int right) {
        return time.isPresent() ? numbers[at + counts[section] + 1 + right] : 0;
    }

    /// The chance to reach a goal from the first section on.
    private double first(double[] numbers, int at, int goal, double[] reached) {
        double sum = 0;
        for (int right = 0; right <= counts[0]; right++) {
            int lacking = least[goal] - right * worth[0];
            if (lacking < reached.length) {
                sum += numbers[at + right] * reached[Math.max(0, lacking)];
            }
            sum += lacking <= 0 ? stopped(numbers, at, 0, right) : 0;
        }
        return sum;
    }

    @Override
    public void addSection(
            SectionTable table, int section, int goal, int at, double weight, double[] told) {
        double mean = 0;
        double[] numbers = table.numbers();
        for (int right = 0; right <= counts[section]; right++) {
            mean += right * (numbers[at + right] + stopped(numbers, at, section, right));
        }
        told[0] += weight;
        told[1] += weight * mean * parts.get(section).section().points();
    }
}
