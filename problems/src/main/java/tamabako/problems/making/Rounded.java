package tamabako.problems.making;

import java.math.BigDecimal;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;

/// How the answer of a product or quotient is rounded.
public enum Rounded {
    /// Not at all.
    EXACT,
    UP,
    DOWN,
    /// From exactly half a unit of the last place.
    TIE;

    /// How the answer of `problem` is rounded; columns and roots are taken as exact.
    public static Rounded of(Problem problem) {
        BigDecimal answer = problem.answer().value();
        int places = problem.terms().places().orElse(0);
        return switch (problem) {
            case Product product -> {
                BigDecimal exact = product.multiplicand().multiply(product.multiplier());
                yield of(answer, exact, BigDecimal.ONE, places);
            }
            case Quotient quotient ->
                    of(answer, quotient.dividend(), quotient.divisor(), quotient.places());
            default -> EXACT;
        };
    }

    /// How `answer` stands to `number / by`.
    private static Rounded of(BigDecimal answer, BigDecimal number, BigDecimal by, int places) {
        BigDecimal over = answer.multiply(by).subtract(number);
        if (over.signum() == 0) {
            return EXACT;
        }
        BigDecimal unit = by.abs().scaleByPowerOfTen(-places);
        if (over.abs().multiply(BigDecimal.TWO).compareTo(unit) == 0) {
            return TIE;
        }
        return over.signum() > 0 ? UP : DOWN;
    }
}
