package tamabako.problems.making;

import java.math.BigInteger;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Whole numbers of so many digits, as the numbers of products and quotients are drawn.
final class Factors {

    private Factors() {}

    /// A number that is not 1 and does not end in 0, each equally likely.
    static long draw(Draws draws, int digits) {
        if (digits == 1) {
            return draws.between(2, 9);
        }
        long front = draws.between(Powers.of(digits - 2), Powers.of(digits - 1) - 1);
        return 10 * front + draws.between(1, 9);
    }

    /// A number of so many digits, each equally likely.
    static long drawAny(Draws draws, int digits) {
        return draws.between(Powers.of(digits - 1), Powers.of(digits) - 1);
    }

    /// How many numbers there are that are not 1 and do not end in 0.
    static BigInteger count(int digits) {
        return BigInteger.valueOf(digits == 1 ? 8 : 81 * Powers.of(digits - 2));
    }

    /// How many numbers there are of so many digits.
    static BigInteger countAny(int digits) {
        return BigInteger.valueOf(9 * Powers.of(digits - 1));
    }
}
