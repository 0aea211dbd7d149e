package tamabako.insight.readiness;

import java.util.Arrays;
import java.util.List;

/// How fast a pupil may work: what is believed after some times.
///
/// The logarithm of how many times as long as usual is `shared + own` as with slips; both are
/// normal, and so is what the times say. On the day of the exam it is `mean + shared * z + own * e`
/// with z the same for all fields and e for each.
final class PaceBelief {

    /// Times further from the middle one than so many spreads count as so far: pupils stop to
    /// sharpen a pencil.
    private static final double FAR = 3;

    private final double[] means;
    private final double[] shared;
    private final double[] own;
    private final double[] unknown;

    /// @param dayVariance the variance of the day of the exam, and of the days that were seen
    PaceBelief(
            List<List<Worked>> answers,
            List<double[]> weights,
            Variety variety,
            double dayVariance) {
        int fields = answers.size();
        this.means = new double[fields];
        this.shared = new double[fields];
        this.own = new double[fields];
        this.unknown = new double[fields];
        double one = variety.problem() * variety.problem();
        double ownVariance = square(variety.pace().own());
        double precision = 1 / square(variety.pace().shared());
        double weighted = precision * variety.pace().mean();
        double[] counts = new double[fields];
        for (int i = 0; i < fields; i++) {
            counts[i] = add(answers.get(i), weights.get(i), variety.problem(), i);
            double certain = counts[i] == 0 ? 0 : 1 / (ownVariance + one / counts[i]);
            precision += certain;
            weighted += certain * means[i];
        }
        double common = weighted / precision;
        for (int i = 0; i < fields; i++) {
            double told = counts[i] == 0 ? 0 : ownVariance / (ownVariance + one / counts[i]);
            means[i] = told * means[i] + (1 - told) * common;
            double untold = square(1 - told) / precision;
            shared[i] = Math.sqrt(untold + dayVariance);
            own[i] = Math.sqrt(ownVariance * (1 - told));
            unknown[i] = untold / (untold + dayVariance);
        }
    }

    private static double square(double value) {
        return value * value;
    }

    /// Puts the mean of the paces into `means`, and gives how many they are by weight.
    private double add(List<Worked> answers, double[] weights, double spread, int field) {
        double middle = middle(answers);
        double sum = 0;
        double count = 0;
        for (int i = 0; i < weights.length; i++) {
            if (answers.get(i).pace().isPresent()) {
                double pace = answers.get(i).pace().getAsDouble();
                sum += weights[i] * Math.clamp(pace, middle - FAR * spread, middle + FAR * spread);
                count += weights[i];
            }
        }
        means[field] = count == 0 ? 0 : sum / count;
        return count;
    }

    private static double middle(List<Worked> answers) {
        double[] paces =
                answers.stream()
                        .filter(answer -> answer.pace().isPresent())
                        .mapToDouble(answer -> answer.pace().getAsDouble())
                        .toArray();
        Arrays.sort(paces);
        return paces.length == 0 ? 0 : paces[paces.length / 2];
    }

    /// The mean of a field.
    double mean(int field) {
        return means[field];
    }

    /// The spread that is the same for all fields, that of the day of the exam included.
    double shared(int field) {
        return shared[field];
    }

    /// The spread of a field by itself.
    double own(int field) {
        return own[field];
    }

    /// Which part of the shared variance is a matter of not knowing the pupil; the rest is the
    /// day's.
    double unknown(int field) {
        return unknown[field];
    }
}
