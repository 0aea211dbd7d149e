package tamabako.insight.readiness;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// The chances of the problems of a paper to be done in time, for every pace that a pupil may have.
///
/// They are told one after another over the whole paper: of each problem, the chance that it is
/// done in time once the one before it was.
final class Clock {

    private static final int APART = Draws.ALONE.length;

    private Clock() {}

    /// For each section the chances of its problems, for each pace.
    ///
    /// @param fields the index of the field of each section
    /// @param faster by how much less the logarithms of the times of each section are
    static double[][][] going(
            List<Outline.Part> parts,
            List<Integer> fields,
            Optional<Duration> whole,
            Standing standing,
            double[] faster) {
        return whole.isPresent()
                ? together(parts, fields, log(whole.get()), standing, faster)
                : alone(parts, fields, standing, faster);
    }

    private static double log(Duration time) {
        return Math.log(time.toMillis() / 1000.0);
    }

    private static double[][][] alone(
            List<Outline.Part> parts, List<Integer> fields, Standing standing, double[] faster) {
        double[][][] going = new double[parts.size()][][];
        for (int s = 0; s < going.length; s++) {
            Outline.Part part = parts.get(s);
            int count = part.tasks().size();
            going[s] = new double[Draws.TOGETHER.length * APART][count];
            for (double[] pace : going[s]) {
                Arrays.fill(pace, 1);
            }
            Optional<Duration> time = part.section().time();
            if (time.isPresent()) {
                fill(going[s], part, fields.get(s), log(time.get()), standing, faster[s]);
            }
        }
        return going;
    }

    private static void fill(
            double[][] going,
            Outline.Part part,
            int field,
            double limit,
            Standing standing,
            double faster) {
        PaceBelief pace = standing.pace();
        double mean = pace.mean(field) - faster;
        double[] logs =
                part.tasks().stream().mapToDouble(task -> Math.log(task.seconds())).toArray();
        double reach = 3 * (pace.shared(field) + pace.own(field));
        TimeSums sums = TimeSums.of(logs, standing.variety().problem(), limit - mean + reach);
        for (int z = 0; z < Draws.TOGETHER.length; z++) {
            for (int e = 0; e < APART; e++) {
                double here =
                        mean
                                + pace.shared(field) * Draws.TOGETHER[z]
                                + pace.own(field) * Draws.ALONE[e];
                sums.going(limit - here, going[z * APART + e], logs.length);
            }
        }
    }

    /// One clock for the whole paper. The pace of each field by itself is taken into the spread of
    /// the sum, so that it is the same for every pupil.
    private static double[][][] together(
            List<Outline.Part> parts,
            List<Integer> fields,
            double limit,
            Standing standing,
            double[] faster) {
        double[][][] going = new double[parts.size()][Draws.TOGETHER.length * APART][];
        PaceBelief pace = standing.pace();
        double spread = standing.variety().problem();
        for (int z = 0; z < Draws.TOGETHER.length; z++) {
            double mean = 0;
            double variance = 0;
            double before = 1;
            for (int s = 0; s < going.length; s++) {
                int field = fields.get(s);
                double own = Math.expm1(pace.own(field) * pace.own(field));
                double factor =
                        Math.exp(
                                pace.mean(field)
                                        - faster[s]
                                        + pace.shared(field) * Draws.TOGETHER[z]
                                        + (spread * spread + pace.own(field) * pace.own(field))
                                                / 2);
                double[] chances = new double[parts.get(s).tasks().size()];
                double here = 0;
                double single = 0;
                for (int i = 0; i < chances.length; i++) {
                    double one = factor * parts.get(s).tasks().get(i).seconds();
                    here += one;
                    single += Math.expm1(spread * spread) * one * one;
                    double now = variance + single + own * here * here;
                    double reached = Math.min(before, within(mean + here, now, limit));
                    chances[i] = before == 0 ? 0 : reached / before;
                    before = reached;
                }
                mean += here;
                variance += single + own * here * here;
                for (int e = 0; e < APART; e++) {
                    going[s][z * APART + e] = chances;
                }
            }
        }
        return going;
    }

    private static double within(double mean, double variance, double limit) {
        double logVariance = Math.log1p(variance / (mean * mean));
        double off = limit - Math.log(mean) + logVariance / 2;
        return NormalCurve.below(off / Math.sqrt(logVariance));
    }
}
