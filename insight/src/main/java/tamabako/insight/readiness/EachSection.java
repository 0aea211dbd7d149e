package tamabako.insight.readiness;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/// So much has to be reached in every section.
///
/// A section's table has, for each goal, the chance to be done with the section and have enough,
/// and to have enough at all; then the expected number of right answers.
final class EachSection implements Goals {

    private final List<Outline.Part> parts;
    private final int[][] least;
    private final int goals;
    private final Optional<Duration> time;

    EachSection(List<Outline.Part> parts, int[] points, boolean inRight, Optional<Duration> time) {
        this.parts = parts;
        this.time = time;
        this.goals = points.length;
        this.least = new int[parts.size()][points.length];
        for (int s = 0; s < least.length; s++) {
            int worth = inRight ? 1 : parts.get(s).section().points();
            for (int goal = 0; goal < points.length; goal++) {
                least[s][goal] = Math.ceilDiv(points[goal], worth);
            }
        }
    }

    @Override
    public int count() {
        return goals;
    }

    @Override
    public boolean whole() {
        return false;
    }

    @Override
    public Optional<Duration> time() {
        return time;
    }

    @Override
    public int most() {
        return 0;
    }

    @Override
    public int width(int section) {
        return 2 * goals + 1;
    }

    @Override
    public SectionTable.Reading reading(int section) {
        int[] ones = Goals.ones(parts.get(section).tasks().size());
        int[] enough = least[section];
        return (sums, right, going, into, at) -> {
            sums.work(right, ones, going, ones.length);
            double mean = 0;
            for (int score = sums.most(); score > 0; score--) {
                mean += score * sums.chance(score);
            }
            into[at + 2 * goals] = mean;
            for (int goal = 0; goal < goals; goal++) {
                into[at + goals + goal] = sums.atLeast(enough[goal]);
            }
            if (time.isPresent()) {
                sums.workStopped(right, ones, going, ones.length);
            }
            for (int goal = 0; goal < goals; goal++) {
                double stopped = time.isPresent() ? sums.atLeast(enough[goal]) : 0;
                into[at + goal] = Math.max(0, into[at + goals + goal] - stopped);
            }
        };
    }

    /// With one clock for all, every section but the last has to be done.
    @Override
    public void add(
            SectionTable[] tables,
            int[] at,
            double weight,
            double[] chances,
            double[] scores,
            double[] spare) {
        for (int goal = 0; goal < goals; goal++) {
            double product = weight;
            for (int s = 0; s < tables.length; s++) {
                boolean done = time.isPresent() && s < tables.length - 1;
                product *= tables[s].numbers()[at[s] + goal + (done ? 0 : goals)];
            }
            chances[goal] += product;
        }
    }

    @Override
    public void addSection(
            SectionTable table, int section, int goal, int at, double weight, double[] told) {
        told[0] += weight * table.numbers()[at + goals + goal];
        told[1] += weight * table.numbers()[at + 2 * goals] * parts.get(section).section().points();
    }
}
