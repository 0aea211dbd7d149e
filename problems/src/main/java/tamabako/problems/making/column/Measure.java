package tamabako.problems.making.column;

import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.column.TotalCondition.Dips;
import tamabako.problems.making.draw.Powers;

/// How far a column is from meeting a condition: 0 where it does, else about as many digits as have
/// to change.
interface Measure {

    /// Farther than anything that can be measured.
    int FAR = 1000;

    int of(Facts facts);

    static Measure of(Condition condition) {
        return switch (condition) {
            case HandCondition hand -> {
                Measure measure = of(hand);
                yield facts -> facts.isUnworkable() ? FAR : measure.of(facts);
            }
            case DigitCondition digits -> DigitMeasure.of(digits);
            case TotalCondition.BelowZero(Dips dips) -> of(dips);
            case TotalCondition.AnswerLength(int least, int most) ->
                    facts -> {
                        long answer = Math.abs(facts.totals().last());
                        return beyond(Powers.digits(answer), least, most);
                    };
            case TotalCondition.NotRound() -> facts -> facts.totals().last() % 10 == 0 ? 1 : 0;
        };
    }

    private static Measure of(HandCondition condition) {
        return switch (condition) {
            case HandCondition.OnlyTechniques(Set<Technique> allowed) -> {
                Technique[] others = others(allowed);
                yield facts -> {
                    int sum = 0;
                    for (Technique other : others) {
                        sum += facts.count(other);
                    }
                    return sum;
                };
            }
            case HandCondition.TechniqueCount(Technique technique, int least, int most) ->
                    facts -> beyond(facts.count(technique), least, most);
            case HandCondition.CarryRun(int least, int most) ->
                    facts -> beyond(facts.longestRun(), least, most);
            case HandCondition.Strokes(int least, int most) ->
                    facts -> (beyond(facts.strokes(), least, most) + 1) / 2;
        };
    }

    private static Technique[] others(Set<Technique> allowed) {
        return java.util.Arrays.stream(Technique.values())
                .filter(technique -> !allowed.contains(technique))
                .toArray(Technique[]::new);
    }

    private static Measure of(Dips dips) {
        return switch (dips) {
            case NEVER -> facts -> facts.totals().below();
            case ONCE_AND_BACK ->
                    facts ->
                            Math.abs(facts.totals().dips() - 1)
                                    + (facts.totals().last() < 0 ? 1 : 0);
            case TO_THE_END ->
                    facts ->
                            beyond(facts.totals().dips(), 1, 2)
                                    + (facts.totals().last() < 0 ? 0 : 1);
        };
    }

    /// How far `value` lies outside `least` to `most`.
    static int beyond(int value, int least, int most) {
        return Math.max(0, Math.max(least - value, value - most));
    }
}
