package tamabako.insight.readiness;

import java.util.Arrays;
import java.util.List;

/// How often a pupil may slip: what is believed after some answers.
///
/// The logarithm of how many times as often as usual is `shared + own`: one part for all work, and
/// one for each field. Both stand on a grid. The answers of a field say how likely each sum is;
/// from them come the chance of each shared part, and of each own part given the shared one.
final class SlipBelief {

    /// The grid of sums, and how many of its steps the shared part takes at once.
    static final double STEP = 0.125;

    static final int SHARED = 2;

    private static final double REACH = 4;

    private final double mean;
    private final int sharedMost;
    private final int ownMost;
    private final double[] sharedBelow;
    private final double[][][] ownBelow;

    /// What the answers say: for each field, those in it with their weights.
    ///
    /// @param weights for each field the weight of each answer, 0 to 1
    SlipBelief(List<List<Worked>> answers, List<double[]> weights, Variety.Trait trait) {
        this.mean = trait.mean();
        this.sharedMost = (int) Math.ceil(REACH * trait.shared() / (SHARED * STEP));
        this.ownMost = (int) Math.ceil(REACH * trait.own() / STEP);
        double[] shared = curve(sharedMost, SHARED * STEP / trait.shared());
        double[] own = curve(ownMost, STEP / trait.own());
        this.ownBelow = new double[answers.size()][][];
        double[] logs = new double[shared.length];
        for (int field = 0; field < answers.size(); field++) {
            double[] fit = fit(answers.get(field), weights.get(field));
            ownBelow[field] = ownBelow(fit, own, logs);
        }
        double most = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            most = Math.max(most, log);
        }
        for (int i = 0; i < shared.length; i++) {
            shared[i] *= Math.exp(logs[i] - most);
        }
        this.sharedBelow = added(shared);
    }

    private static double[] curve(int most, double step) {
        double[] curve = new double[2 * most + 1];
        for (int i = -most; i <= most; i++) {
            curve[i + most] = Math.exp(-0.5 * i * step * i * step);
        }
        return curve;
    }

    private int offset() {
        return SHARED * sharedMost + ownMost;
    }

    /// The logarithm of how likely the answers of a field are for each sum, less the most of them.
    private double[] fit(List<Worked> answers, double[] weights) {
        double[] fit = new double[2 * offset() + 1];
        double rightSlips = 0;
        for (int i = 0; i < weights.length; i++) {
            rightSlips += answers.get(i).right() ? weights[i] * answers.get(i).slips() : 0;
        }
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < fit.length; k++) {
            double times = times(k - offset());
            double sum = -rightSlips * times;
            for (int i = 0; i < weights.length; i++) {
                Worked answer = answers.get(i);
                sum +=
                        answer.right()
                                ? 0
                                : weights[i] * Math.log(-Math.expm1(-answer.slips() * times));
            }
            fit[k] = sum;
            most = Math.max(most, sum);
        }
        for (int k = 0; k < fit.length; k++) {
            fit[k] = Math.exp(fit[k] - most);
        }
        return fit;
    }

    /// The distribution of the own part for each shared one; adds how likely each shared one is to
    /// `logs`.
    private double[][] ownBelow(double[] fit, double[] own, double[] logs) {
        double[][] below = new double[logs.length][];
        for (int i = 0; i < logs.length; i++) {
            double[] chances = new double[own.length];
            double sum = 0;
            for (int j = 0; j < own.length; j++) {
                chances[j] = own[j] * fit[SHARED * i + j];
                sum += chances[j];
            }
            logs[i] += Math.log(sum);
            below[i] = added(sum > 0 ? chances : own.clone());
        }
        return below;
    }

    private static double[] added(double[] chances) {
        double sum = 0;
        for (int i = 0; i < chances.length; i++) {
            sum += chances[i];
            chances[i] = sum;
        }
        for (int i = 0; i < chances.length; i++) {
            chances[i] /= sum;
        }
        return chances;
    }

    /// How many times as often as usual a pupil slips at a place of the grid.
    double times(int place) {
        return Math.exp(mean + STEP * place);
    }

    /// The shared part below which the pupil is with the chance `chance`.
    int shared(double chance) {
        return find(sharedBelow, chance);
    }

    /// The place of the sum of the shared and an own part on the grid, 0 being the mean.
    int place(int shared, int field, double chance) {
        int own = find(ownBelow[field][shared], chance);
        return SHARED * (shared - sharedMost) + own - ownMost;
    }

    private static int find(double[] below, double chance) {
        int found = Arrays.binarySearch(below, chance);
        return Math.min(below.length - 1, found < 0 ? -found - 1 : found);
    }
}
