package tamabako.insight.mastery;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.Strand;

/// How pupils in general slip: in each strand of their work as many times as the usual rates have
/// it, and how far they differ.
public final class MasteryPopulation {

    private static final int MOVES = Move.values().length;
    private static final int NONE_KNOWN = new Strand.OfKind(SlipKind.NONE_KNOWN).index();
    private static final MasteryPopulation SHIPPED =
            new MasteryPopulation(new double[Strand.COUNT], Spread.USUAL, Forgetting.USUAL);

    private final double[] means;
    private final Spread spread;
    private final Forgetting forgetting;

    private MasteryPopulation(double[] means, Spread spread, Forgetting forgetting) {
        this.means = means;
        this.spread = spread;
        this.forgetting = forgetting;
    }

    /// Pupils as the usual rates have them.
    public static MasteryPopulation shipped() {
        return SHIPPED;
    }

    static MasteryPopulation of(double[] means, Spread spread, Forgetting forgetting) {
        return new MasteryPopulation(means.clone(), spread, forgetting);
    }

    /// The same pupils who differ as `changed` has it.
    public MasteryPopulation with(Spread changed) {
        return new MasteryPopulation(means, changed, forgetting);
    }

    /// The same pupils, forgetting as `changed` has it.
    public MasteryPopulation with(Forgetting changed) {
        return new MasteryPopulation(means, spread, changed);
    }

    /// This population as the answers of these pupils have it, right ones too, without anybody
    /// saying what was wrong in them. Few pupils change it little.
    public MasteryPopulation learnedFrom(Collection<MasteryTally> pupils) {
        return PopulationLearning.learn(this, List.copyOf(pupils));
    }

    /// How far pupils differ.
    public Spread spread() {
        return spread;
    }

    public Forgetting forgetting() {
        return forgetting;
    }

    /// The natural logarithm of how many times as often as usual the middle pupil slips in
    /// `strand`.
    public double mean(Strand strand) {
        return means[strand.index()];
    }

    double mean(int strand) {
        return means[strand];
    }

    /// The covariance of two strands among pupils.
    double covariance(int one, int other) {
        double own = one < MOVES ? spread.move() : spread.kind();
        double covariance = one == other ? own * own : 0;
        if (one == NONE_KNOWN || other == NONE_KNOWN) {
            return covariance;
        }
        covariance += spread.general() * spread.general();
        boolean moves = one < MOVES && other < MOVES;
        return moves ? covariance + spread.hand() * spread.hand() : covariance;
    }

    @Override
    public String toString() {
        return "%s %s".formatted(spread, Arrays.toString(means));
    }
}
