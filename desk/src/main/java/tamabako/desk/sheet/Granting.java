package tamabako.desk.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.desk.web.Words;
import tamabako.frame.Technique;
import tamabako.problems.Problem;
import tamabako.problems.making.Made;
import tamabako.problems.making.Wish;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.words.ProblemWords;
import tamabako.problems.words.Sayable;

/// Grants what a form asks for, or tells beside its fields why it cannot be granted.
///
/// @param problems the problems; none where the form has faults, old or new
/// @param nearest a wish close by that can be granted, where one is known
record Granting(List<Problem> problems, Optional<Wish> nearest) {

    Granting {
        problems = List.copyOf(problems);
    }

    /// Makes what is asked for, from that seed.
    static Granting of(WishForm asked, Drawn drawn, Words words) {
        if (asked.practice().isEmpty()) {
            return new Granting(List.of(), Optional.empty());
        }
        return switch (asked.practice().get().make(drawn.seed(), drawn.swaps())) {
            case Practice.Granted.Found(List<Problem> problems) ->
                    new Granting(problems, Optional.empty());
            case Practice.Granted.Refused(Sayable reason, Optional<Wish> nearest) -> {
                asked.form().blame(field(reason), say(reason, words));
                yield new Granting(List.of(), nearest);
            }
        };
    }

    /// The reason in the words of the page, where it has words of its own for it.
    private static String say(Sayable reason, Words words) {
        if (reason instanceof Made.Reason.RequiredNotAllowed(Set<Technique> required)) {
            List<String> names =
                    required.stream()
                            .sorted()
                            .map(technique -> words.say("technique." + technique.word()))
                            .toList();
            return words.say("make.not-learnt", String.join(", ", names));
        }
        return ProblemWords.of(words.language()).say(reason);
    }

    /// The field that a reason is told beside; `whole` stands below them all.
    private static String field(Sayable told) {
        if (!(told instanceof Made.Reason reason)) {
            return "section";
        }
        return switch (reason) {
            case Made.Reason.OutOfRange range -> field(range.part());
            case Made.Reason.RequiredNotAllowed _ -> "practise";
            case Made.Reason.NothingAllowed _ -> "technique";
            case Made.Reason.OnlySoMany _ -> "count";
            case Made.Reason.Clash(List<Sayable> wishes) -> field(wishes);
            case Made.Reason.NoneFound _,
                    Made.Reason.NoMoreFound _,
                    Made.Reason.CustomNeeds _,
                    Made.Reason.CustomNeedsDecimals _,
                    Made.Reason.CustomNotMet _ ->
                    "whole";
        };
    }

    /// A clash stands beside what is practised or learnt, if that is part of it.
    private static String field(List<Sayable> wishes) {
        if (wishes.stream().anyMatch(HandCondition.TechniqueCount.class::isInstance)) {
            return "practise";
        }
        return wishes.stream().anyMatch(HandCondition.OnlyTechniques.class::isInstance)
                ? "technique"
                : "whole";
    }

    private static String field(Made.Part part) {
        return switch (part) {
            case COUNT -> "count";
            case ROWS -> "rows";
            case LEAST_DIGITS -> "least";
            case MOST_DIGITS -> "most";
            case DIGITS_IN_ALL -> "ji";
            case MINUS_ROWS, MOST_MINUS_ROWS -> "minus";
            case PLACES -> "places";
            case MULTIPLICAND_DIGITS -> "multiplicand";
            case MULTIPLIER_DIGITS -> "multiplier";
            case DIVISOR_DIGITS -> "divisor";
            case QUOTIENT_DIGITS -> "quotient";
            case DEGREE -> "degree";
            case ROOT_DIGITS -> "digits";
            case STROKES_WITHIN,
                    DIGITS,
                    ANSWER_PLACES,
                    DECIMALS,
                    INNER_ZEROS,
                    REVISED,
                    ROUNDINGS,
                    LINES,
                    LEAVES,
                    SPAN,
                    GRADE ->
                    "whole";
        };
    }
}
