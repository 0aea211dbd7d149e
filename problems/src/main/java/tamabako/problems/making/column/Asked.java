package tamabako.problems.making.column;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.column.TotalCondition.AnswerLength;
import tamabako.problems.making.column.TotalCondition.BelowZero;
import tamabako.problems.making.column.TotalCondition.Dips;

/// What is asked of a column, as those who draw it ask about it.
record Asked(
        Shape shape,
        Signs signs,
        List<Condition> conditions,
        SignPatterns patterns,
        LengthPatterns lengths) {

    static Asked of(Shape shape, Signs signs, List<Condition> conditions) {
        return new Asked(
                shape,
                signs,
                List.copyOf(conditions),
                new SignPatterns(shape.rows(), signs),
                new LengthPatterns(shape));
    }

    Asked with(List<Condition> changed) {
        return new Asked(shape, signs, List.copyOf(changed), patterns, lengths);
    }

    Asked with(Signs changed) {
        return of(shape, changed, conditions);
    }

    /// The techniques that steps may be done by.
    Set<Technique> allowed() {
        Set<Technique> allowed = EnumSet.allOf(Technique.class);
        for (Condition condition : conditions) {
            switch (condition) {
                case HandCondition.OnlyTechniques(Set<Technique> only) -> allowed.retainAll(only);
                case HandCondition.TechniqueCount(Technique technique, _, int most)
                        when most <= 0 ->
                        allowed.remove(technique);
                default -> {}
            }
        }
        return allowed;
    }

    boolean allowsAll() {
        return allowed().size() == Technique.values().length;
    }

    /// The techniques that must occur.
    Set<Technique> required() {
        Set<Technique> required = EnumSet.noneOf(Technique.class);
        for (Condition condition : conditions) {
            if (condition instanceof HandCondition.TechniqueCount(Technique technique, int least, _)
                    && least > 0) {
                required.add(technique);
            }
        }
        return required;
    }

    /// Whether an allowed technique passes ten, so that a total may be longer than the rows and a
    /// row may take more than is there.
    boolean passesTen() {
        return allowed().stream().anyMatch(Technique::passesTen);
    }

    /// Whether a total below zero is refused, or cannot be.
    boolean neverBelow() {
        return signs.mostMinus() == 0
                || !passesTen()
                || conditions.contains(new BelowZero(Dips.NEVER));
    }

    Optional<DigitCondition.DigitsEach> digitsEach() {
        return conditions.stream()
                .filter(DigitCondition.DigitsEach.class::isInstance)
                .map(DigitCondition.DigitsEach.class::cast)
                .findFirst();
    }

    /// How long the answer may be.
    AnswerLength answerLength() {
        return conditions.stream()
                .filter(AnswerLength.class::isInstance)
                .map(AnswerLength.class::cast)
                .findFirst()
                .orElseGet(() -> new AnswerLength(1, HandCondition.ANY));
    }

    /// Whether it is asked how far carries run on.
    boolean measuresRuns() {
        return conditions.stream().anyMatch(HandCondition.CarryRun.class::isInstance);
    }

    Facts facts() {
        return measuresRuns()
                ? Facts.measuringRuns(shape.rows(), shape.places())
                : new Facts(shape.rows(), shape.places());
    }
}
