package tamabako.insight.pooling;

import java.util.List;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;

/// How often one pupil makes each kind of slip.
///
/// The rate of a kind is `(a + slips) / (a / rate + occasions)`: `rate` and shape `a` are the
/// population's, slips and occasions the pupil's over all answers, right ones too. Slips are not
/// seen but shared out by the rates themselves, so both are found in turns (EM).
public final class PupilRates {

    /// No rate is higher.
    private static final double MOST = 0.9;

    private static final int ROUNDS = 40;
    private static final double NO_MORE = 1e-4;

    private PupilRates() {}

    /// The rates of the pupil who gave `answers`; those of the population where there are none.
    public static Rates of(Population population, List<Evidence> answers) {
        Rates rates = population.rates();
        double before = Double.NEGATIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            Evidence.Sum sum = Evidence.sum(answers, rates);
            if (Math.abs(sum.logChance() - before) < NO_MORE) {
                break;
            }
            before = sum.logChance();
            rates = counted(population, sum);
        }
        return rates;
    }

    private static Rates counted(Population population, Evidence.Sum sum) {
        double shape = population.shape();
        Rates usual = population.rates();
        return usual.with(kind ->
                Math.min(
                        MOST,
                        (shape + sum.slips().of(kind))
                                / (shape / usual.of(kind) + sum.occasions().of(kind))));
    }
}
