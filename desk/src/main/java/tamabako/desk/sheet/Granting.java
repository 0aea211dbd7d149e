package tamabako.desk.sheet;

import java.util.List;
import tamabako.desk.web.Words;
import tamabako.problems.Problem;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.words.ProblemWords;

/// Grants the wish of a form, or tells beside its fields why it cannot be granted.
final class Granting {

    private Granting() {}

    /// The problems of that seed; none where the form has faults, old or new.
    static List<Problem> grant(WishForm asked, long seed, Words words) {
        if (asked.wish().isEmpty()) {
            return List.of();
        }
        return switch (Maker.make(asked.wish().get(), asked.count(), seed)) {
            case Made.Found(List<Problem> problems, _) -> problems;
            case Made.Impossible(_, Made.Reason reason, _) -> blame(asked, reason, words);
            case Made.NotFound(_, Made.Reason reason) -> blame(asked, reason, words);
        };
    }

    private static List<Problem> blame(WishForm asked, Made.Reason reason, Words words) {
        String why = ProblemWords.of(words.language()).say(reason);
        asked.form().blame(field(reason), why);
        return List.of();
    }

    /// The field that a reason is told beside; `whole` stands below them all.
    private static String field(Made.Reason reason) {
        return switch (reason) {
            case Made.Reason.OutOfRange range -> field(range.part());
            case Made.Reason.TooManyMinusRows _ -> "minus";
            case Made.Reason.TooManyPlaces _ -> "places";
            case Made.Reason.RequiredNotAllowed _ -> "practise";
            case Made.Reason.NoSuchColumn _ -> "technique";
            case Made.Reason.OnlySoMany _ -> "count";
            case Made.Reason.NoneFound _, Made.Reason.NoMoreFound _ -> "whole";
        };
    }

    private static String field(Made.Part part) {
        return switch (part) {
            case COUNT -> "count";
            case ROWS -> "rows";
            case LEAST_DIGITS -> "least";
            case MOST_DIGITS -> "most";
            case MINUS_ROWS -> "minus";
            case PLACES -> "places";
            case MULTIPLICAND_DIGITS -> "multiplicand";
            case MULTIPLIER_DIGITS -> "multiplier";
            case DIVISOR_DIGITS -> "divisor";
            case QUOTIENT_DIGITS -> "quotient";
            case DEGREE -> "degree";
            case ROOT_DIGITS -> "digits";
        };
    }
}
