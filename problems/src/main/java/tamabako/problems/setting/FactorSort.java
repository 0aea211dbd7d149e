package tamabako.problems.setting;

import java.math.BigDecimal;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.effort.Effort;

/// Of what sort a product, quotient or root is: everything of it that a paper counts. Those of one
/// sort can stand for one another.
final class FactorSort {

    private FactorSort() {}

    /// The sort in words, such as `quotient 4 5 decimals up zero`.
    static String of(Problem problem) {
        return switch (problem) {
            case Product product -> ofProduct(product);
            case Quotient quotient -> ofQuotient(quotient);
            case Root root -> "root %d %d".formatted(root.degree(), length(root.answer().value()));
            default -> throw new IllegalArgumentException("No factors in " + problem);
        };
    }

    private static String ofProduct(Product product) {
        BigDecimal multiplicand = product.multiplicand();
        BigDecimal multiplier = product.multiplier();
        BigDecimal exact = multiplicand.multiply(multiplier);
        int places = Math.max(multiplicand.scale(), multiplier.scale());
        return "product %s %s%s%s%s"
                .formatted(
                        length(multiplicand),
                        length(multiplier),
                        places > 0 ? " decimals" : "",
                        rounded(product, product.answer().value().compareTo(exact)),
                        hasZero(multiplicand) || hasZero(multiplier) ? " zero" : "");
    }

    private static String ofQuotient(Quotient quotient) {
        BigDecimal answer = quotient.answer().value();
        int places = Math.max(quotient.dividend().scale(), quotient.divisor().scale());
        return "quotient %s %s%s%s%s%s"
                .formatted(
                        length(quotient.divisor()),
                        length(answer),
                        places > 0 ? " decimals" : "",
                        rounded(
                                quotient,
                                answer.multiply(quotient.divisor()).compareTo(quotient.dividend())),
                        hasZero(answer) ? " zero" : "",
                        Effort.firstRevisions(quotient) > 0 ? " revised" : "");
    }

    /// @param over how the answer stands to what it is rounded from
    private static String rounded(Problem problem, int over) {
        int places = problem.terms().places().orElse(0);
        if (over != 0) {
            return over > 0 ? " up" : " down";
        }
        return problem.answer().value().scale() < places ? " short" : "";
    }

    /// How many digits a number has: of a whole number all, of others without zeros at the front.
    private static int length(BigDecimal number) {
        return number.precision();
    }

    private static boolean hasZero(BigDecimal number) {
        return figures(number).contains("0");
    }

    /// The digits of a number without zeros at its front and end.
    static String figures(BigDecimal number) {
        return number.stripTrailingZeros().unscaledValue().abs().toString();
    }
}
