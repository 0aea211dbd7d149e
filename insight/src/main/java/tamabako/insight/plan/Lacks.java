package tamabako.insight.plan;

import java.util.SplittableRandom;
import java.util.function.Supplier;
import tamabako.insight.mastery.SlipPosterior;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.Strand;

/// What a pupil lacks, as far as it is known: how many times as often as usual slips are made in
/// each strand.
public final class Lacks {

    private final SlipPosterior frame;
    private final SlipPosterior mind;
    private final double[] left;

    private Lacks(SlipPosterior frame, SlipPosterior mind, double[] left) {
        this.frame = frame;
        this.mind = mind;
        this.left = left;
    }

    /// What the answers tell, and what is left of it after the practice since.
    ///
    /// @param frame of work on the frame
    /// @param mind of work in the head
    /// @param learning how practice tells
    public static Lacks of(
            SlipPosterior frame, SlipPosterior mind, Practised practised, Learning learning) {
        return new Lacks(frame, mind, practised.left(learning));
    }

    /// The likeliest factors, as a [Load] has them.
    public double[] likeliest() {
        double[] factors = new double[Load.SIZE];
        for (Strand strand : Strand.all()) {
            factors[Load.from(Manner.FRAME) + strand.index()] = frame.factor(strand);
            factors[Load.from(Manner.MIND) + strand.index()] = mind.factor(strand);
        }
        return withPractice(factors);
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
            return withPractice(factors);
        };
    }

    private double[] withPractice(double[] factors) {
        for (int strand = 0; strand < factors.length; strand++) {
            factors[strand] *= left[strand];
        }
        return factors;
    }
}
