package tamabako.insight.pooling;

import java.util.List;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// How often slips are made in general, and how far pupils differ in it.
///
/// A pupil's rate of a kind comes from a gamma distribution with the mean of the population and the
/// shape given here.
///
/// @param rates the rates of pupils in general
/// @param shape how alike pupils are, above 0: one pupil's rate has a standard deviation of
///   `1/sqrt(shape)` times its mean
public record Population(Rates rates, double shape) {

    /// The shape that is taken where it has not been learned: pupils differ as much as the mean.
    public static final double USUAL_SHAPE = 1;

    /// How many answers the rates from before learning are worth.
    private static final double BEFORE = 50;

    private static final int ROUNDS = 60;

    /// Learning ends when a round raises the logarithm of the chance of all answers by less.
    private static final double NO_MORE = 1e-6;

    public Population {
        if (!(shape > 0 && shape < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("The shape is above 0, not %s.".formatted(shape));
        }
    }

    /// Pupils as the shipped rates have them. They are assumptions: no count of slips has been
    /// published.
    public static Population shipped() {
        return of(Rates.shipped());
    }

    /// Pupils with these rates in the mean.
    public static Population of(Rates rates) {
        return new Population(rates, USUAL_SHAPE);
    }

    /// This population with its rates learned from `answers`, right ones too, by the EM algorithm.
    /// The rates from before count as much as fifty wrong answers, shared among the kinds as they
    /// would be expected in the same problems.
    public Population learnedFrom(List<Evidence> answers) {
        Rates learned = rates;
        double before = Double.NEGATIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            Evidence.Sum sum = Evidence.sum(answers, learned);
            if (sum.logChance() - before < NO_MORE) {
                break;
            }
            before = sum.logChance();
            learned = counted(sum);
        }
        return new Population(learned, shape);
    }

    private Rates counted(Evidence.Sum sum) {
        double expected = 0;
        for (SlipKind kind : SlipKind.values()) {
            expected += rates.of(kind) * sum.occasions().of(kind);
        }
        double all = expected;
        if (all == 0) {
            return rates;
        }
        return rates.with(kind -> {
            double worth = BEFORE * rates.of(kind) * sum.occasions().of(kind) / all;
            return worth == 0
                    ? rates.of(kind)
                    : (worth + sum.slips().of(kind))
                            / (worth / rates.of(kind) + sum.occasions().of(kind));
        });
    }
}
