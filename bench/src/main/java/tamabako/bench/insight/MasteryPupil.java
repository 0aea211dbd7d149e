package tamabako.bench.insight;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import tamabako.insight.mastery.Spread;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// A simulated pupil who slips more in some moves than in others.
///
/// @param factors how many times as often as usual, by move
/// @param rates the rates of every kind of slip, and these factors
record MasteryPupil(Map<Move, Double> factors, Rates rates) {

    private static final double MOST = 0.5;

    /// A pupil drawn from pupils who differ as `spread` has it.
    ///
    /// @param kindsOfTheHand how far pupils differ in each kind of slip of the hand whatever the
    ///   move, which the model does not know of: a standard deviation of logarithms
    static MasteryPupil draw(Spread spread, double kindsOfTheHand, SplittableRandom chance) {
        double general = spread.general() * chance.nextGaussian();
        double hand = spread.hand() * chance.nextGaussian();
        Map<Move, Double> factors = new EnumMap<>(Move.class);
        Rates rates = Rates.shipped();
        for (Move move : Move.values()) {
            double factor = Math.exp(general + hand + spread.move() * chance.nextGaussian());
            factors.put(move, factor);
            rates = rates.with(move, factor);
        }
        for (SlipKind kind : SlipKind.values()) {
            if (kind != SlipKind.NONE_KNOWN) {
                double factor =
                        ofTheHand(kind)
                                ? Math.exp(kindsOfTheHand * chance.nextGaussian())
                                : Math.exp(general + spread.kind() * chance.nextGaussian());
                rates = rates.with(kind, Math.min(MOST, factor * rates.of(kind)));
            }
        }
        return new MasteryPupil(factors, rates);
    }

    /// How many times as often as usual the pupil slips in `move`.
    double factor(Move move) {
        return Objects.requireNonNull(factors.get(move));
    }

    private static boolean ofTheHand(SlipKind kind) {
        return switch (kind) {
            case CARRY_LEFT_OUT,
                    BORROW_LEFT_OUT,
                    TEN_COMPLEMENT_WRONG,
                    FIVE_COMPLEMENT_WRONG,
                    ONE_BEAD,
                    FIVE_BEAD ->
                    true;
            default -> false;
        };
    }
}
