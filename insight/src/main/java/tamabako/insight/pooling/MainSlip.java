package tamabako.insight.pooling;

import java.util.Comparator;
import java.util.List;
import tamabako.insight.slip.SlipKind;

/// Which kind of slip stands out in a pupil's wrong answers.
///
/// Each kind is held against the pupils' usual mixture: how much likelier are these answers if it
/// makes up three, five or seven tenths of the pupil's slips than if nothing stands out?
///
/// @param likeliest the kinds from the likeliest on
/// @param wrong how many wrong answers were looked at
public record MainSlip(List<Candidate> likeliest, int wrong) {

    /// The logarithm of the Bayes factor from which a kind is said to stand out. At this value
    /// fewer than one in twenty simulated pupils without a main slip is said to have one; see
    /// docs/validation.md.
    public static final double STANDS_OUT = 3;

    public MainSlip {
        likeliest = List.copyOf(likeliest);
    }

    /// One kind that may be the main one.
    ///
    /// @param kind the kind
    /// @param share which part of the pupil's slips it seems to make up, 0 to 1
    /// @param logBayesFactor the natural logarithm of how many times likelier the answers are with
    ///   it as the main slip than without any
    /// @param certainty the chance that it is the main slip, where a pupil is as likely as not to
    ///   have one and every kind is as likely as the others, 0 to 1
    public record Candidate(SlipKind kind, double share, double logBayesFactor, double certainty) {}

    /// Whether the first kind stands out.
    public boolean standsOut() {
        return !likeliest.isEmpty() && likeliest.getFirst().logBayesFactor() >= STANDS_OUT;
    }

    static MainSlip ranked(List<Candidate> candidates, int wrong) {
        return new MainSlip(
                candidates.stream()
                        .sorted(
                                Comparator.comparingDouble(Candidate::logBayesFactor)
                                        .reversed()
                                        .thenComparing(Candidate::kind))
                        .toList(),
                wrong);
    }
}
