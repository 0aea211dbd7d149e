package tamabako.problems.making.column;

import java.util.Comparator;
import java.util.Optional;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.words.Sayable;

/// One thing asked of a column besides its [Shape] and [Signs]. It checks a made column and says in
/// words what failed; its own words name it.
public sealed interface Condition extends Sayable
        permits HandCondition, DigitCondition, TotalCondition {

    @Override
    default String topic() {
        return "condition";
    }

    /// What of `column` does not meet this; empty where all does.
    ///
    /// @throws tamabako.frame.Unworkable if it has rows of more than 15 digits, or too many rows of
    ///   them for a frame of sixteen rods
    default Optional<Missed> missedBy(Column column) {
        return Judge.missed(this, Facts.of(column));
    }

    /// Whether `other` asks about the same thing, so that a column is asked only one of both.
    default boolean isAboutSame(Condition other) {
        return place(this) == place(other);
    }

    /// The order in which conditions are told: the hand, the digits, the total.
    static Comparator<Condition> inOrder() {
        return Comparator.comparingInt(Condition::place);
    }

    private static int place(Condition condition) {
        return switch (condition) {
            case HandCondition.OnlyTechniques _ -> 0;
            case HandCondition.TechniqueCount(Technique technique, _, _) -> place(technique);
            case HandCondition.CarryRun _ -> 5;
            case HandCondition.Strokes _ -> 6;
            case DigitCondition.DigitsEach _ -> 7;
            case DigitCondition.LeadsDiffer _ -> 8;
            case DigitCondition.RowsDiffer _ -> 9;
            case DigitCondition.NoRepeatedDigit _ -> 10;
            case DigitCondition.NoCounting _ -> 11;
            case DigitCondition.PlacesDiffer _ -> 12;
            case DigitCondition.LastDigits _ -> 13;
            case TotalCondition.BelowZero _ -> 14;
            case TotalCondition.AnswerLength _ -> 15;
            case TotalCondition.NotRound _ -> 16;
        };
    }

    private static int place(Technique technique) {
        return switch (technique) {
            case DIRECT -> 1;
            case FIVE_COMPLEMENT -> 2;
            case TEN_COMPLEMENT -> 3;
            case TEN_WITH_FIVE -> 4;
        };
    }
}
