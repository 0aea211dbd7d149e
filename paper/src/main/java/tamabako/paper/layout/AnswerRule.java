package tamabako.paper.layout;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import tamabako.frame.Rounding;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;

/// The rule by which an answer is written: exact, or to so many places, rounded, cut or with a
/// remainder.
sealed interface AnswerRule {

    /// All there is.
    record Exact() implements AnswerRule {}

    /// Five and above go up.
    record Rounded(int places) implements AnswerRule {}

    /// Further places are left out.
    record Cut(int places) implements AnswerRule {}

    /// What is left is written beside it.
    record WithRemainder(int places) implements AnswerRule {}

    /// The rule of one problem.
    static AnswerRule of(Problem problem) {
        int places = problem.terms().places().orElse(0);
        boolean down = problem.rounding() == Rounding.DOWN;
        return switch (problem) {
            case Column _ -> new Exact();
            case Product product when isExact(product) -> new Exact();
            case Product _ -> down ? new Cut(places) : new Rounded(places);
            case Quotient _, Root _ -> down ? new WithRemainder(places) : new Rounded(places);
        };
    }

    /// What must be said about `problems`, which all have the same rule; nothing where it makes no
    /// difference.
    static Optional<String> told(List<Problem> problems, PrintWords words) {
        if (problems.isEmpty()) {
            return Optional.empty();
        }
        return switch (of(problems.getFirst())) {
            case Exact _ -> Optional.empty();
            case Rounded(int places) when places == 0 ->
                    when(
                            problems.stream().anyMatch(AnswerRule::isInexact),
                            words.say("note.whole"));
            case Rounded(int places) -> Optional.of(words.say("note.places", places));
            case Cut(int places) when places == 0 ->
                    when(
                            problems.stream().anyMatch(AnswerRule::isInexact),
                            words.say("note.cut.whole"));
            case Cut(int places) -> Optional.of(words.say("note.cut.places", places));
            case WithRemainder(int places) ->
                    when(
                            problems.stream().anyMatch(AnswerRule::leavesRemainder),
                            places == 0
                                    ? words.say("note.remainder")
                                    : words.say("note.remainder.places", places));
        };
    }

    /// Whether the rule can make a difference to a problem, by what the pupil sees of it: not where
    /// whole numbers are multiplied.
    static boolean canMatter(Problem problem) {
        return switch (problem) {
            case Column _ -> false;
            case Product(_, BigDecimal multiplicand, BigDecimal multiplier, _) ->
                    multiplicand.scale() > 0 || multiplier.scale() > 0;
            case Quotient _, Root _ -> true;
        };
    }

    /// Whether something is left over.
    static boolean leavesRemainder(Problem problem) {
        return problem.answer().remainder().filter(left -> left.signum() != 0).isPresent();
    }

    private static Optional<String> when(boolean needed, String words) {
        return needed ? Optional.of(words) : Optional.empty();
    }

    private static boolean isExact(Product product) {
        return product.terms().places().isEmpty() && product.terms().unit().isEmpty();
    }

    private static boolean isInexact(Problem problem) {
        BigDecimal answer = problem.answer().value();
        return switch (problem) {
            case Column _ -> false;
            case Product(_, BigDecimal multiplicand, BigDecimal multiplier, _) ->
                    multiplicand.multiply(multiplier).compareTo(answer) != 0;
            case Quotient(_, BigDecimal dividend, BigDecimal divisor, _) ->
                    answer.multiply(divisor).compareTo(dividend) != 0;
            case Root(_, int degree, BigDecimal of, _) -> answer.pow(degree).compareTo(of) != 0;
        };
    }
}
