package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import tamabako.frame.Cause;
import tamabako.frame.Rounding;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

/// A misread operand leads to the answer of another problem, by that problem's own exact decimal
/// arithmetic, rounded under the same terms.
class OperandSlipsTest {

    @Test
    void aMisreadDigitLeadsToTheAnswerOfTheProblemWithThatDigit() {
        int[] compared = new int[1];
        forSeeds(
                300,
                draw -> {
                    Problem problem = problem(draw);
                    Events events = EventTable.of(problem).events();
                    for (int i = 0; i < events.size(); i++) {
                        long code = events.code(i);
                        if (Code.way(code) == Way.DIGIT_MISREAD
                                && Code.where(code)
                                        instanceof Where.Operand(Cause.Operand operand)) {
                            int change = Code.digits(code).getLast() - Code.digits(code).getFirst();
                            BigDecimal misread =
                                    BigDecimal.valueOf(change)
                                            .scaleByPowerOfTen(Code.rod(code).orElseThrow());
                            BigDecimal off =
                                    BigDecimal.valueOf(
                                            events.tenths(i), ProblemSlips.places(problem) + 1);
                            compared[0]++;
                            assertThat(problem.answer().value().add(off))
                                    .as("%s, %s off by %s", problem, operand, misread)
                                    .isEqualByComparingTo(
                                            changed(problem, operand, misread).answer().value());
                        }
                    }
                });
        assertThat(compared[0]).isGreaterThan(5_000);
    }

    private static Problem problem(Draw draw) {
        BigDecimal first = draw.decimal(draw.between(2, 5), draw.between(0, 3));
        BigDecimal second = draw.decimal(draw.between(1, 4), draw.between(0, 3));
        Terms terms =
                Terms.PLAIN
                        .withPlaces(draw.between(0, 3))
                        .withRounding(draw.chance(1, 2) ? Rounding.DOWN : Rounding.HALF_UP);
        return switch (draw.between(1, 4)) {
            case 1 -> new Product("1", first, second, Terms.PLAIN);
            case 2 -> new Product("1", first, second, terms);
            case 3 -> new Quotient("1", first, second, terms);
            default -> new Root("1", draw.between(2, 3), first, terms);
        };
    }

    private static Problem changed(Problem problem, Cause.Operand operand, BigDecimal by) {
        boolean second = operand == Cause.Operand.MULTIPLIER || operand == Cause.Operand.DIVISOR;
        BigDecimal first = second ? BigDecimal.ZERO : by;
        BigDecimal other = second ? by : BigDecimal.ZERO;
        return switch (problem) {
            case Product(String id, BigDecimal a, BigDecimal b, Terms terms) ->
                    new Product(id, a.add(first), b.add(other), terms);
            case Quotient(String id, BigDecimal a, BigDecimal b, Terms terms) ->
                    new Quotient(id, a.add(first), b.add(other), terms);
            case Root(String id, int degree, BigDecimal of, Terms terms) ->
                    new Root(id, degree, of.add(first), terms);
            default -> throw new IllegalArgumentException(problem + " has no operands.");
        };
    }
}
