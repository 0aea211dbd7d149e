package tamabako.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import tamabako.frame.Rounding;
import tamabako.paper.Reader.Asked;
import tamabako.paper.Reader.Told;
import tamabako.problems.Problem;
import tamabako.problems.Terms;

/// Answers of a key, worked again by decimal arithmetic from what is printed on the sheet.
final class Reworked {

    private Reworked() {}

    /// @param problem only for the rule by which its answer is rounded
    static void check(Problem problem, Asked asked, Told told) {
        BigDecimal value = Reader.value(told.value());
        BigDecimal remainder =
                told.remainder().isEmpty() ? BigDecimal.ZERO : Reader.value(told.remainder());
        int places = problem.terms().places().orElse(0);
        boolean down = problem.rounding() == Rounding.DOWN;
        BigDecimal first = asked.numbers().getFirst();
        BigDecimal last = asked.numbers().getLast();
        switch (asked.sign()) {
            case "+" -> {
                BigDecimal sum = asked.numbers().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
                assertThat(value).isEqualByComparingTo(sum);
            }
            case "×" -> {
                BigDecimal exact = first.multiply(last);
                boolean all =
                        problem.terms().places().isEmpty() && problem.terms().unit().isEmpty();
                BigDecimal rounded =
                        exact.setScale(places, down ? RoundingMode.DOWN : RoundingMode.HALF_UP);
                assertThat(value).isEqualByComparingTo(all ? exact : rounded);
            }
            case "÷" -> {
                RoundingMode mode = down ? RoundingMode.DOWN : RoundingMode.HALF_UP;
                // Decimals that nothing is asked of are divided to the end, if there is one.
                boolean toTheEnd = isPlain(problem) && remainder.signum() == 0;
                int worked = toTheEnd ? Math.max(0, value.scale()) : places;
                assertThat(value).isEqualByComparingTo(first.divide(last, worked, mode));
                BigDecimal left = first.subtract(value.multiply(last));
                assertThat(remainder).isEqualByComparingTo(down ? left : BigDecimal.ZERO);
            }
            case "√" -> checkRoot(2, first, value, remainder, places, down);
            case "∛" -> checkRoot(3, first, value, remainder, places, down);
            default -> throw new AssertionError("No such sign: " + asked.sign());
        }
    }

    /// A root rounded down is the largest number whose power is not above; rounded half up, it is
    /// the one within half a unit of its last place.
    private static void checkRoot(
            int degree,
            BigDecimal of,
            BigDecimal root,
            BigDecimal remainder,
            int places,
            boolean down) {
        BigDecimal unit = BigDecimal.ONE.movePointLeft(places);
        BigDecimal half = unit.divide(BigDecimal.TWO);
        BigDecimal least = down ? root : root.subtract(half).max(BigDecimal.ZERO);
        BigDecimal above = root.add(down ? unit : half);
        assertThat(least.pow(degree)).isLessThanOrEqualTo(of);
        assertThat(above.pow(degree)).isGreaterThan(of);
        BigDecimal left = of.subtract(root.pow(degree));
        assertThat(remainder).isEqualByComparingTo(down ? left : BigDecimal.ZERO);
    }

    /// Whether neither places nor rounding nor a unit are asked for.
    private static boolean isPlain(Problem problem) {
        Terms terms = problem.terms();
        return terms.places().isEmpty() && terms.rounding().isEmpty() && terms.unit().isEmpty();
    }
}
