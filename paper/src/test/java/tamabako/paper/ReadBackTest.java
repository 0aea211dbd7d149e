package tamabako.paper;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tamabako.frame.Rounding;
import tamabako.paper.Reader.Asked;
import tamabako.paper.Reader.Told;
import tamabako.paper.wish.Part;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;

/// The key of a sheet is right for what is printed on the sheet: both are read back from the files,
/// and the answers are worked again with decimal arithmetic.
class ReadBackTest {

    private static final int SHEETS = 200;

    @Test
    void theKeyAnswersWhatStandsOnTheSheet() {
        forSeeds(
                SHEETS,
                draw -> {
                    Sheet sheet = DrawnSheets.sheet(draw);
                    Pages problems = Pages.of(sheet, DrawnSheets.wish(draw, Part.SHEET));
                    Pages answers = Pages.of(sheet, DrawnSheets.wish(draw, Part.KEY));
                    Map<String, Asked> asked = Reader.sheet(problems);
                    Map<String, Told> told = Reader.key(answers);
                    assertThat(asked).as("%s", problems.text()).hasSameSizeAs(sheet.problems());
                    assertThat(told.keySet()).as("%s", answers.text()).isEqualTo(asked.keySet());
                    for (Problem problem : sheet.problems()) {
                        check(
                                problem,
                                requireNonNull(asked.get(problem.id())),
                                requireNonNull(told.get(problem.id())));
                    }
                });
    }

    private static void check(Problem problem, Asked asked, Told told) {
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
                boolean toTheEnd = problem.terms().equals(Terms.PLAIN) && remainder.signum() == 0;
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
}
