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

    private final List<Timed> parts;
    private final Optional<Duration> whole;
    private final Standing standing;

    /// @param whole the time of the whole paper, where it has one
    Clock(List<Outline.Part> parts, Optional<Duration> whole, Standing standing) {
        this.parts = parts.stream().map(part -> new Timed(part, standing)).toList();
        this.whole = whole;
        this.standing = standing;
    }

    /// A section with its times for one pupil.
    private static final class Timed {

        final Outline.Part part;

        /// The index of its field.
        final int field;

        /// The logarithms of the times of its problems by the pupil's shape.
        final double[] logs;

        /// The spread of the pupil's pace in it by itself.
        final double own;

        Timed(Outline.Part part, Standing standing) {
            this.part = part;
            this.field = Field.all().indexOf(part.field());
            this.logs = standing.shape().logs(part);
            this.own = Math.hypot(standing.pace().own(field), standing.shape().doubt(part));
        }
    }

    /// For each section the chances of its problems, for each pace.
    ///
    /// @param faster by how much less the logarithms of the times of each section are
    double[][][] going(double[] faster) {
        return whole.isPresent() ? together(log(whole.get()), faster) : alone(faster);
    }

    private static double log(Duration time) {
        return Math.log(time.toMillis() / 1000.0);
    }

    private double[][][] alone(double[] faster) {
        double[][][] going = new double[parts.size()][][];
        for (int s = 0; s < going.length; s++) {
            Timed timed = parts.get(s);
            int count = timed.logs.length;
            going[s] = new double[Draws.TOGETHER.length * APART][count];
            for (double[] pace : going[s]) {
                Arrays.fill(pace, 1);
            }
            Optional<Duration> time = timed.part.section().time();
            if (time.isPresent()) {
                fill(going[s], timed, log(time.get()), faster[s]);
            }
        }
        return going;
    }

    private void fill(double[][] going, Timed timed, double limit, double faster) {
        double[] logs = timed.logs;
        double shared = standing.pace().shared(timed.field);
        double mean = standing.pace().mean(timed.field) - faster;
        double reach = 3 * (shared + timed.own);
        TimeSums sums = TimeSums.of(logs, standing.variety().problem(), limit - mean + reach);
        for (int z = 0; z < Draws.TOGETHER.length; z++) {
            for (int e = 0; e < APART; e++) {
                double here = mean + shared * Draws.TOGETHER[z] + timed.own * Draws.ALONE[e];
                sums.going(limit - here, going[z * APART + e], logs.length);
            }
        }
    }

    /// One clock for the whole paper. The pace of each field by itself is taken into the spread of
    /// the sum, so that it is the same for every pupil.
    private double[][][] together(double limit, double[] faster) {
        double[][][] going = new double[parts.size()][Draws.TOGETHER.length * APART][];
        PaceBelief pace = standing.pace();
        double spread = standing.variety().problem();
        for (int z = 0; z < Draws.TOGETHER.length; z++) {
            double mean = 0;
            double variance = 0;
            double before = 1;
            for (int s = 0; s < going.length; s++) {
                Timed timed = parts.get(s);
                int field = timed.field;
                double own = Math.expm1(timed.own * timed.own);
                double factor =
                        Math.exp(
                                pace.mean(field)
                                        - faster[s]
                                        + pace.shared(field) * Draws.TOGETHER[z]
                                        + (spread * spread + timed.own * timed.own) / 2);
                double[] chances = new double[timed.logs.length];
                double here = 0;
                double single = 0;
                for (int i = 0; i < chances.length; i++) {
                    double one = factor * Math.exp(timed.logs[i]);
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
