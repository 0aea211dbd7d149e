package tamabako.problems.making;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Makes products, exact quotients and exact roots: every problem that grants the wish is equally
/// likely.
///
/// @param first the digits of the first number drawn
/// @param second the digits of the second number drawn, 0 for none
record PlainMaker(Wish wish, int first, int second) {

    static PlainMaker of(ProductWish wish) {
        return new PlainMaker(wish, wish.multiplicandDigits(), wish.multiplierDigits());
    }

    static PlainMaker of(QuotientWish wish) {
        return new PlainMaker(wish, wish.divisorDigits(), wish.quotientDigits());
    }

    static PlainMaker of(RootWish wish) {
        return new PlainMaker(wish, wish.rootDigits(), 0);
    }

    Made make(int count, long seed) {
        BigInteger there = there();
        if (there.compareTo(BigInteger.valueOf(count)) < 0) {
            return new Made.Impossible(
                    wish,
                    new Made.Reason.OnlySoMany(count, there.intValueExact()),
                    Optional.empty());
        }
        Draws draws = new Draws(seed);
        Set<Problem> seen = new HashSet<>();
        List<Problem> problems = new ArrayList<>(count);
        while (problems.size() < count) {
            Problem problem = draw(draws);
            if (seen.add(problem)) {
                problems.add(problem.withId(Integer.toString(problems.size() + 1)));
            }
        }
        return new Made.Found(problems, seed);
    }

    private Problem draw(Draws draws) {
        BigDecimal a = factor(draws, first);
        return switch (wish) {
            case ProductWish _ -> new Product("", a, factor(draws, second), Terms.PLAIN);
            case QuotientWish _ ->
                    new Quotient("", a.multiply(whole(draws, second)), a, Terms.PLAIN);
            case RootWish(int degree, _) -> new Root("", degree, a.pow(degree), Terms.PLAIN);
            case ColumnWish _ -> throw new IllegalStateException("Columns have their own maker.");
        };
    }

    /// How many such problems there are.
    private BigInteger there() {
        BigInteger one = factors(first);
        return switch (wish) {
            case ProductWish _ -> one.multiply(factors(second));
            case QuotientWish _ -> one.multiply(BigInteger.valueOf(9 * Powers.of(second - 1)));
            default -> one;
        };
    }

    private static BigInteger factors(int digits) {
        return BigInteger.valueOf(digits == 1 ? 8 : 81 * Powers.of(digits - 2));
    }

    /// A number that is not 1 and does not end in 0.
    private static BigDecimal factor(Draws draws, int digits) {
        if (digits == 1) {
            return BigDecimal.valueOf(draws.between(2, 9));
        }
        long front = draws.between(Powers.of(digits - 2), Powers.of(digits - 1) - 1);
        return BigDecimal.valueOf(10 * front + draws.between(1, 9));
    }

    private static BigDecimal whole(Draws draws, int digits) {
        return BigDecimal.valueOf(draws.between(Powers.of(digits - 1), Powers.of(digits) - 1));
    }
}
