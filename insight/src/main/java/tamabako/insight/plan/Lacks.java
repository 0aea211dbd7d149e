package tamabako.insight.plan;

import java.util.SplittableRandom;
import java.util.function.Supplier;
import tamabako.insight.mastery.SlipPosterior;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.Strand;

/// What a pupil lacks, as far as it is known: how many times as often as usual slips are made in
/// each strand.
///
/// @param frame in work on the frame
/// @param mind in work in the head
public record Lacks(SlipPosterior frame, SlipPosterior mind) {

    /// The likeliest factors, as a [Load] has them.
    public double[] likeliest() {
        double[] factors = new double[Load.SIZE];
        for (Strand strand : Strand.all()) {
            factors[Load.from(Manner.FRAME) + strand.index()] = frame.factor(strand);
            factors[Load.from(Manner.MIND) + strand.index()] = mind.factor(strand);
        }
        return factors;
    }

    /// Draws pupils that this one may be, always the same ones for a seed.
    public Supplier<double[]> pupils(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        SlipPosterior.Draws onFrame = frame.draws();
        SlipPosterior.Draws inMind = mind.draws();
        return () -> {
            double[] factors = new double[Load.SIZE];
            System.arraycopy(
                    onFrame.next(chance), 0, factors, Load.from(Manner.FRAME), Strand.COUNT);
            System.arraycopy(inMind.next(chance), 0, factors, Load.from(Manner.MIND), Strand.COUNT);
            return factors;
        };
    }
}
