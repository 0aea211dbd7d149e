package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tamabako.problems.grade.Pass;

/// One pupil before one paper: the chance to reach each goal of the paper, for every pupil that
/// this one may be.
final class Sitting {

    /// How many pupils one pupil is taken for, where goals are of each section and of the whole.
    private static final int DRAWS_OF_EACH = Draws.MOST;

    private static final int DRAWS_OF_WHOLE = 128;

    private static final double DAYS_REACH = 3;
    private static final int DAY_STEP = 3;
    private static final int APART = Draws.ALONE.length;

    private final List<Outline.Part> parts;
    private final Goals goals;
    private final Standing standing;
    private final List<Integer> fieldOfPart;
    private final List<Integer> fields = new ArrayList<>();
    private final int[] place;
    private final Draws draws;
    private final int dayMost;
    private final double[] days;
    private final Clock clock;
    private final double[][][] going;
    private final double[][] done;
    private final FirstProblems[] first;
    private final SectionTable[] tables;
    private final double[] scores;
    private final double[] spare;

    Sitting(Outline outline, List<Outline.Part> parts, Standing standing) {
        this.parts = parts;
        this.standing = standing;
        this.goals = Goals.of(outline.grade(), parts);
        this.fieldOfPart = parts.stream().map(part -> Field.all().indexOf(part.field())).toList();
        fieldOfPart.stream().distinct().forEach(fields::add);
        this.place = fieldOfPart.stream().mapToInt(fields::indexOf).toArray();
        this.draws = new Draws(standing, fields, goals.whole() ? DRAWS_OF_WHOLE : DRAWS_OF_EACH);
        double day = standing.slipsOfDay();
        this.dayMost = (int) Math.ceil(DAYS_REACH * day / (DAY_STEP * SlipBelief.STEP));
        this.days = days(day);
        this.clock = new Clock(parts, outline.grade().time(), standing);
        this.going = clock.going(new double[parts.size()]);
        this.done = new double[parts.size()][];
        this.first = new FirstProblems[parts.size()];
        this.tables = new SectionTable[parts.size()];
        for (int s = 0; s < tables.length; s++) {
            done[s] = done(going[s]);
            first[s] = first(s);
            tables[s] = SectionTable.of(first[s], going[s], goals.putting(s));
        }
        this.scores = new double[goals.most() + 1];
        this.spare = new double[goals.most() + 1];
    }

    private double[] days(double spread) {
        double[] weights = new double[2 * dayMost + 1];
        double sum = 0;
        for (int d = -dayMost; d <= dayMost; d++) {
            double off = d * DAY_STEP * SlipBelief.STEP / spread;
            weights[d + dayMost] = Math.exp(-off * off / 2);
            sum += weights[d + dayMost];
        }
        for (int d = 0; d < weights.length; d++) {
            weights[d] /= sum;
        }
        return weights;
    }

    private FirstProblems first(int section) {
        int lowest = draws.lowest() - DAY_STEP * dayMost - Help.FEWER_STEPS;
        int highest = draws.highest() + DAY_STEP * dayMost;
        double[] slips = parts.get(section).tasks().stream().mapToDouble(Task::slips).toArray();
        return new FirstProblems(slips, standing.slips(), lowest, highest, goals.reading(section));
    }

    /// For each pace the chance that all problems are done.
    private static double[] done(double[][] going) {
        return Arrays.stream(going)
                .mapToDouble(pace -> Arrays.stream(pace).reduce(1, (a, b) -> a * b))
                .toArray();
    }

    Goals goals() {
        return goals;
    }

    /// What is done with one day and pace of a pupil: where its numbers begin in each table, and
    /// how likely it is.
    private interface Node {
        void at(int[] at, double weight);
    }

    /// Goes through every day and pace of pupil `i`.
    ///
    /// @param fewer for each section how many steps of the grid fewer slips are made
    private void walk(int i, SectionTable[] used, int[] fewer, Node node) {
        double[] together = draws.together(i);
        int[] at = new int[used.length];
        for (int d = -dayMost; d <= dayMost; d++) {
            for (int z = 0; z < together.length; z++) {
                double weight = days[d + dayMost] * together[z];
                if (weight > 1e-9) {
                    for (int s = 0; s < used.length; s++) {
                        int where = draws.place(i, place[s]) + DAY_STEP * d - fewer[s];
                        at[s] = used[s].at(z, draws.alone(i, place[s]), where);
                    }
                    node.at(at, weight);
                }
            }
        }
    }

    /// The chance of every pupil that this one may be to reach each goal.
    double[][] all() {
        double[][] all = new double[draws.count()][goals.count()];
        for (int i = 0; i < all.length; i++) {
            double[] chances = all[i];
            walk(
                    i,
                    tables,
                    new int[tables.length],
                    (at, weight) -> goals.add(tables, at, weight, chances, scores, spare));
        }
        return all;
    }

    /// The mean chance to reach `goal` of every `step`-th pupil that this one may be, with some
    /// sections worked with fewer slips or faster.
    private double mean(SectionTable[] used, int[] fewer, int goal, int step) {
        double[] sum = new double[1];
        int count = 0;
        for (int i = 0; i < draws.count(); i += step) {
            walk(
                    i,
                    used,
                    fewer,
                    (at, weight) -> sum[0] += weight * goals.chance(used, at, goal, scores, spare));
            count++;
        }
        return sum[0] / count;
    }

    /// How much the chance to reach `goal` rises by each help, none of less than nothing.
    List<Help> helps(int goal) {
        int step = goals.whole() ? 8 : 4;
        double now = mean(tables, new int[tables.length], goal, step);
        List<Help> helps = new ArrayList<>();
        for (int f = 0; f < fields.size(); f++) {
            int field = fields.get(f);
            int[] fewer = new int[tables.length];
            double[] faster = new double[tables.length];
            boolean late = false;
            for (int s = 0; s < tables.length; s++) {
                if (fieldOfPart.get(s) == field) {
                    fewer[s] = Help.FEWER_STEPS;
                    faster[s] = -Math.log1p(-Help.FASTER);
                    late |= timeRunsOut(s) > 0.01;
                }
            }
            Field of = Field.all().get(field);
            helps.add(new Help(of, Help.Way.FEWER_SLIPS, mean(tables, fewer, goal, step) - now));
            if (late) {
                SectionTable[] quick = faster(faster);
                double then = mean(quick, new int[tables.length], goal, step);
                helps.add(new Help(of, Help.Way.FASTER, then - now));
            }
        }
        return helps;
    }

    private SectionTable[] faster(double[] faster) {
        double[][][] changed = clock.going(faster);
        SectionTable[] quick = tables.clone();
        for (int s = 0; s < quick.length; s++) {
            if (!Arrays.deepEquals(changed[s], going[s])) {
                quick[s] = SectionTable.of(first[s], changed[s], goals.putting(s));
            }
        }
        return quick;
    }

    /// The chance that the clock stops the pupil before the last problem of a section is done.
    double timeRunsOut(int section) {
        int from = goals.time().isPresent() ? 0 : section;
        double sum = 0;
        for (int i = 0; i < draws.count(); i++) {
            double[] together = draws.together(i);
            for (int z = 0; z < together.length; z++) {
                double all = 1;
                for (int s = from; s <= section; s++) {
                    all *= done[s][z * APART + draws.alone(i, place[s])];
                }
                sum += together[z] * (1 - all);
            }
        }
        return sum / draws.count();
    }

    /// What a section by itself brings every pupil that this one may be: the chance to reach the
    /// goal in it, or 1 where it has none, and the points to be expected.
    ///
    /// @param goal which goal of the paper
    double[][] section(int section, int goal) {
        double[][] told = new double[draws.count()][2];
        for (int i = 0; i < told.length; i++) {
            double[] together = draws.together(i);
            for (int d = -dayMost; d <= dayMost; d++) {
                for (int z = 0; z < together.length; z++) {
                    int where = draws.place(i, place[section]) + DAY_STEP * d;
                    int at = tables[section].at(z, draws.alone(i, place[section]), where);
                    double weight = days[d + dayMost] * together[z];
                    goals.addSection(tables[section], section, goal, at, weight, told[i]);
                }
            }
        }
        return told;
    }

    /// Whether goals are of the whole paper, so that no section has one of its own.
    static boolean isOfWhole(Pass pass) {
        return switch (pass) {
            case Pass.Whole _ -> true;
            case Pass.PointsInEach _, Pass.RightInEach _ -> false;
            case Pass.ByScore byScore -> byScore.scored() == Pass.Scored.WHOLE;
        };
    }
}
