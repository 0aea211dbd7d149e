package tamabako.insight.mastery;

import java.util.OptionalInt;
import tamabako.insight.slip.Strand;

/// How many typical problems more it takes until something may be said of a move.
///
/// Two things are needed: so many steps that a pupil on the mark would have slipped once in them;
/// and an estimate so exact that the mark lies outside of eight chances in ten. What one slip more
/// or less tells is taken from what the pupil's answers have told so far.
final class NeededProblems {

    /// The mark must be so many standard deviations away.
    private static final double SURELY = 1.2815515655446004;

    /// A slip that is expected tells at most as much as one that is seen for certain, and is never
    /// taken to tell less than this part of it.
    private static final double LEAST_TOLD = 0.2;

    /// What it is taken to tell before there are any.
    private static final double USUALLY_TOLD = 0.5;

    private static final double SLIPS_ON_THE_MARK = 1;
    private static final int MOST = 2_000;

    private final SlipPosterior posterior;
    private final Strand strand;
    private final double prior;
    private final double times;
    private final double each;

    /// @param prior the variance of the logarithm among pupils
    /// @param times the mark, in times as often as usual
    /// @param each how many slips a usual pupil is expected to make in a typical problem
    NeededProblems(
            SlipPosterior posterior, Strand strand, double prior, double times, double each) {
        this.posterior = posterior;
        this.strand = strand;
        this.prior = prior;
        this.times = times;
        this.each = each;
    }

    /// Whether a pupil on the mark would have slipped once by now.
    boolean isEnough() {
        return times * posterior.expected(strand) >= SLIPS_ON_THE_MARK;
    }

    OptionalInt problems() {
        if (each <= 0) {
            return OptionalInt.empty();
        }
        double lacking = SLIPS_ON_THE_MARK / times - posterior.expected(strand);
        double forSteps = Math.max(0, lacking) / each;
        double variance = posterior.covariance(strand, strand);
        double off = Math.log(times) - posterior.log(strand);
        // What the pupil truly does lies off the estimate, too: by the deviation in the mean.
        double wanted = SURELY * SURELY / (off * off + variance);
        double told = told(variance);
        double forMark =
                Math.max(0, wanted - 1 / variance) / (told * each * posterior.factor(strand));
        double problems = Math.max(1, Math.max(forSteps, forMark));
        return problems > MOST ? OptionalInt.empty() : OptionalInt.of(rounded(problems));
    }

    private double told(double variance) {
        double made = posterior.expected(strand) * posterior.factor(strand);
        return made < 1
                ? USUALLY_TOLD
                : Math.clamp((1 / variance - 1 / prior) / made, LEAST_TOLD, 1);
    }

    /// Rounded up, for it is an estimate: to tens below 100, to fifties above.
    private static int rounded(double problems) {
        int to = problems <= 10 ? 5 : problems <= 100 ? 10 : 50;
        return (int) Math.ceil(problems / to) * to;
    }
}
