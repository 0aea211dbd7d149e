package tamabako.problems.making;

import java.math.BigDecimal;
import java.util.List;
import tamabako.problems.Answer;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;

/// What the customs of setters look at in a product or quotient.
final class Look {

    private Look() {}

    /// Whether `number` is whole, above 1, and does not end in 0.
    static boolean isFactor(BigDecimal number) {
        return number.stripTrailingZeros().scale() == 0 && number.compareTo(BigDecimal.ONE) > 0;
    }

    /// Whether the answer is exact with fewer places than are asked for, though there are decimals.
    static boolean isShort(Problem problem) {
        boolean decimals =
                switch (problem) {
                    case Product product ->
                            product.multiplicand().scale() + product.multiplier().scale() > 0;
                    case Quotient quotient ->
                            Math.max(quotient.dividend().scale(), quotient.divisor().scale()) > 0;
                    default -> false;
                };
        Answer answer = problem.answer();
        return decimals
                && answer.value().scale() < problem.terms().places().orElse(0)
                && Rounded.of(problem) == Rounded.EXACT;
    }

    /// The two numbers whose digits are asked for.
    static List<String> numbers(Problem problem) {
        return switch (problem) {
            case Product product ->
                    List.of(figures(product.multiplicand()), figures(product.multiplier()));
            case Quotient quotient -> List.of(figures(quotient.divisor()), answerFigures(problem));
            default -> List.of(answerFigures(problem));
        };
    }

    /// The digits of the multiplier, or of the quotient: those that everything is multiplied by.
    static String multiplier(Problem problem) {
        return numbers(problem).getLast();
    }

    static String answerFigures(Problem problem) {
        return figures(problem.answer().value());
    }

    /// Whether a factor, or the quotient, has a zero between other digits.
    static boolean hasInnerZero(Problem problem) {
        return problem instanceof Product
                ? numbers(problem).stream().anyMatch(figures -> figures.contains("0"))
                : answerFigures(problem).contains("0");
    }

    /// The digits of a number without zeros at its front and end.
    static String figures(BigDecimal number) {
        return number.stripTrailingZeros().unscaledValue().abs().toString();
    }
}
