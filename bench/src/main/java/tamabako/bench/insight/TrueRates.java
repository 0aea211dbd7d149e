package tamabako.bench.insight;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.SlipKind;

/// How often simulated pupils slip in a step of each move: by the simulation's own account of its
/// occasions, apart from the finder's.
final class TrueRates {

    private static final int COLUMNS = 300;

    private final Map<Move, Map<SlipKind, Double>> perStep = new EnumMap<>(Move.class);

    /// @param plan the columns that are worked
    TrueRates(ColumnPlan plan, SplittableRandom chance) {
        Map<Move, Integer> steps = new EnumMap<>(Move.class);
        for (int i = 0; i < COLUMNS; i++) {
            Fate fate = Fate.kind();
            ColumnPupil.writes(plan.draw(chance), fate);
            for (Fate.Occasion occasion : fate.occasions()) {
                occasion.move()
                        .ifPresent(move ->
                                of(move).merge(occasion.kind(), occasion.weight(), Double::sum));
            }
            for (Move move : Move.values()) {
                steps.merge(move, fate.stepsBy(move), Integer::sum);
            }
        }
        perStep.forEach((move, kinds) ->
                kinds.replaceAll((_, weight) -> weight / steps.getOrDefault(move, 1)));
    }

    private Map<SlipKind, Double> of(Move move) {
        return perStep.computeIfAbsent(move, _ -> new EnumMap<>(SlipKind.class));
    }

    /// How often `pupil` slips in a step of `move`.
    double of(MasteryPupil pupil, Move move) {
        double rate = 0;
        for (Map.Entry<SlipKind, Double> kind : of(move).entrySet()) {
            rate += kind.getValue() * pupil.rates().of(kind.getKey());
        }
        return pupil.factor(move) * rate;
    }
}
