package tamabako.insight.readiness;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// So much has to be reached in every section.
///
/// A section's table has, for each goal from the lowest up, the chance to have enough, and then the
/// expected number of right answers; with one clock for all also the chance of each goal to be done
/// with the section and have enough.
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
        return goals - 1;
    }

    @Override
    public FirstProblems.Reading reading(int section) {
        int[] enough = least[section];
        double[] reached = new double[parts.get(section).tasks().size() + 2];
        return new FirstProblems.Reading() {
            @Override
            public int columns() {
                return goals + 1;
            }

            @Override
            public void read(ScoreSums scores, double[] into, int at) {
                double mean = 0;
                int most = scores.most();
                reached[most + 1] = 0;
                for (int score = most; score > 0; score--) {
                    reached[score] = reached[score + 1] + scores.chance(score);
                    mean += reached[score];
                }
                reached[0] = reached[1] + scores.chance(0);
                for (int goal = 0; goal < goals; goal++) {
                    into[at + goal] = reached[Math.clamp(enough[goal], 0, most + 1)];
                }
                into[at + goals] = mean;
            }
        };
    }

    @Override
    public SectionTable.Putting putting(int section) {
        return new SectionTable.Putting() {
            @Override
            public int width() {
                return time.isPresent() ? 2 * goals + 1 : goals + 1;
            }

            @Override
            public void put(double[] done, double[] stopped, double[] into, int at) {
                for (int i = 0; i <= goals; i++) {
                    into[at + i] = done[i] + stopped[i];
                }
                if (time.isPresent()) {
                    System.arraycopy(done, 0, into, at + goals + 1, goals);
                }
            }
        };
    }

    /// With one clock for all, every section but the last has to be done.
    private int from(int[] at, int section) {
        boolean done = time.isPresent() && section < at.length - 1;
        return at[section] + (done ? goals + 1 : 0);
    }

    @Override
    public void add(
            SectionTable[] tables,
            int[] at,
            double weight,
            double[] chances,
            double[] scores,
            double[] spare) {
        Arrays.fill(scores, weight);
        for (int s = 0; s < tables.length; s++) {
            double[] numbers = tables[s].numbers();
            int from = from(at, s);
            for (int goal = 0; goal < scores.length; goal++) {
                scores[goal] *= numbers[from + goal];
            }
        }
        for (int goal = 0; goal < scores.length; goal++) {
            chances[goal] += scores[goal];
        }
    }

    @Override
    public double chance(
            SectionTable[] tables, int[] at, int goal, double[] scores, double[] spare) {
        double product = 1;
        for (int s = 0; s < tables.length; s++) {
            product *= tables[s].numbers()[from(at, s) + goal];
        }
        return product;
    }

    @Override
    public void addSection(
            SectionTable table, int section, int goal, int at, double weight, double[] told) {
        told[0] += weight * table.numbers()[at + goal];
        told[1] += weight * table.numbers()[at + goals] * parts.get(section).section().points();
    }
}
