package tamabako.problems.setting;

import java.util.Arrays;
import java.util.List;

/// The sums of every form's features, and how far they are from the goal.
///
/// The cost of a form is the norm of its deviations, each in tolerances, to the fourth power: it is
/// near the largest of them and still falls where a smaller one falls. A split costs what its forms
/// cost together, so that each is drawn to the goal however far off another is.
final class FormSums {

    private static final int NOBODY = -1;

    private final double[][] features;
    private final double[] totals;
    private final double[] tolerances;
    private double[][] sums = {};
    private double[] costs = {};

    FormSums(List<Candidate> pool, FormGoal goal) {
        features =
                pool.stream()
                        .map(candidate -> candidate.features(goal.size()))
                        .toArray(double[][]::new);
        totals = goal.totals().stream().mapToDouble(Double::doubleValue).toArray();
        tolerances = goal.tolerances().stream().mapToDouble(Double::doubleValue).toArray();
    }

    /// Sums `forms` anew.
    void begin(int[][] forms) {
        sums = new double[forms.length][totals.length];
        costs = new double[forms.length];
        for (int form = 0; form < forms.length; form++) {
            for (int candidate : forms[form]) {
                add(sums[form], candidate, 1);
            }
            costs[form] = cost(form, NOBODY, NOBODY);
        }
    }

    /// What the split costs.
    double cost() {
        return Arrays.stream(costs).sum();
    }

    /// By how much the cost grows if `out` leaves `form` and `in` comes, and the other way round in
    /// the form `other`, unless that is the bench.
    double growth(int form, int other, int out, int in) {
        double growth = cost(form, out, in) - costs[form];
        return other == Seats.BENCH ? growth : growth + cost(other, in, out) - costs[other];
    }

    /// Does what [#growth] looked at.
    void swap(int form, int other, int out, int in) {
        replace(form, out, in);
        if (other != Seats.BENCH) {
            replace(other, in, out);
        }
    }

    /// The largest deviation of any form and feature, in tolerances.
    double worst() {
        double worst = 0;
        for (double[] sum : sums) {
            for (int i = 0; i < sum.length; i++) {
                worst = Math.max(worst, Math.abs(sum[i] - totals[i]) / tolerances[i]);
            }
        }
        return worst;
    }

    private void replace(int form, int out, int in) {
        add(sums[form], out, -1);
        add(sums[form], in, 1);
        costs[form] = cost(form, NOBODY, NOBODY);
    }

    private void add(double[] sum, int candidate, int times) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += times * features[candidate][i];
        }
    }

    /// What `form` costs when `out` has left and `in` has come.
    private double cost(int form, int out, int in) {
        double all = 0;
        for (int i = 0; i < totals.length; i++) {
            double sum = sums[form][i];
            sum += out == in ? 0 : features[in][i] - features[out][i];
            double off = (sum - totals[i]) / tolerances[i];
            all += off * off * off * off;
        }
        return Math.sqrt(Math.sqrt(all));
    }
}
