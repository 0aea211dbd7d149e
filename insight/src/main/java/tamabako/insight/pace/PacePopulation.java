package tamabako.insight.pace;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import tamabako.insight.mastery.Forgetting;

/// How fast pupils in general are, and how far they differ.
///
/// @param means how much slower than usual the middle pupil is in each part, as natural logarithms,
///   by the order of [Part]
/// @param speed how far pupils differ altogether: a standard deviation of logarithms
/// @param part how far they differ in one part
/// @param noise how far the times of one pupil vary from problem to problem
/// @param forgetting how much less old times count
public record PacePopulation(
        List<Double> means, double speed, double part, double noise, Forgetting forgetting) {

    private static final PacePopulation SHIPPED =
            new PacePopulation(zeros(), 0.6, 0.25, 0.2, Forgetting.USUAL);

    public PacePopulation {
        means = List.copyOf(means);
        if (means.size() != Part.COUNT || !(speed > 0 && part > 0 && noise > 0)) {
            throw new IllegalArgumentException(
                    "%d parts have means; %s, %s and %s are above 0."
                            .formatted(Part.COUNT, speed, part, noise));
        }
    }

    private static List<Double> zeros() {
        return Collections.nCopies(Part.COUNT, 0.0);
    }

    /// Pupils as [tamabako.problems.effort.StrokeTimes#USUAL] has them, of whom it is not known
    /// whether they are beginners or old hands.
    public static PacePopulation shipped() {
        return SHIPPED;
    }

    /// The same pupils, forgetting as `changed` has it.
    public PacePopulation with(Forgetting changed) {
        return new PacePopulation(means, speed, part, noise, changed);
    }

    /// This population as the times of these pupils have it. Few pupils change it little.
    public PacePopulation learnedFrom(Collection<PaceTally> pupils) {
        return PaceLearning.learn(this, List.copyOf(pupils));
    }
}
