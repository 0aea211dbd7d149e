package tamabako.problems.making.column;

import java.util.Optional;
import java.util.Set;
import tamabako.frame.Technique;

/// Tells what the hand does otherwise than a condition asks.
final class HandJudge {

    private HandJudge() {}

    static Optional<Missed> missed(HandCondition condition, Facts facts) {
        return switch (condition) {
            case HandCondition.OnlyTechniques(Set<Technique> allowed) -> other(allowed, facts);
            case HandCondition.TechniqueCount(Technique technique, int least, int most) ->
                    counted(technique, facts.count(technique), least, most);
            case HandCondition.CarryRun(int least, int most) ->
                    run(facts.longestRun(), least, most);
            case HandCondition.Strokes(int least, int most) ->
                    facts.strokes() >= least && facts.strokes() <= most
                            ? Optional.empty()
                            : Optional.of(new Missed.StrokeCount(facts.strokes(), least, most));
        };
    }

    private static Optional<Missed> run(int rods, int least, int most) {
        if (rods < least) {
            return Optional.of(new Missed.ShortCarries(rods, least));
        }
        return rods > most ? Optional.of(new Missed.LongCarries(rods, most)) : Optional.empty();
    }

    private static Optional<Missed> other(Set<Technique> allowed, Facts facts) {
        for (Technique technique : Technique.values()) {
            if (!allowed.contains(technique) && facts.count(technique) > 0) {
                return Optional.of(new Missed.OtherTechnique(technique, facts.count(technique)));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> counted(Technique technique, int times, int least, int most) {
        if (times < least) {
            return Optional.of(new Missed.TooSeldom(technique, times, least));
        }
        return times > most
                ? Optional.of(new Missed.TooOften(technique, times, most))
                : Optional.empty();
    }
}
