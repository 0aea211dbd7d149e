package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tamabako.problems.making.draw.Draws;

/// How many columns there are with every digit a given number of times, and how often each digit
/// then stands in them.
///
/// With `n` digits in all, of which `rows` are leads and so not 0, there are as many columns as
/// ways to choose the places of the zeros among the `n - rows` others, times the ways to choose
/// those of the ones among what is left, and so on to the nines.
final class Bags {

    private final int rows;
    private final int least;
    private final int most;
    private final LengthPatterns lengths;
    private final int fewest;
    private final Choice totals;

    /// By digits in all; filled as they are needed.
    private final @Nullable Choice[] zeros;

    /// By kinds of digit and places for them.
    private final @Nullable Choice[][] others;

    Bags(Asked asked, DigitCondition.DigitsEach each) {
        this.rows = asked.shape().rows();
        this.least = Math.max(0, each.least());
        this.most = each.most();
        this.lengths = asked.lengths();
        this.fewest = asked.shape().lengths().leastInAll(rows);
        int highest = asked.shape().lengths().mostInAll(rows);
        this.zeros = new Choice[highest + 1];
        this.others = new Choice[10][highest + 1];
        this.totals = totals(highest);
    }

    /// Each column with one digit more stands for a tenth, so that every choice of lengths is
    /// equally likely.
    private Choice totals(int highest) {
        List<BigInteger> weights = new ArrayList<>();
        for (int digits = fewest; digits <= highest; digits++) {
            weights.add(
                    lengths.count(digits)
                            .multiply(BigInteger.TEN.pow(highest - digits))
                            .multiply(zeros(digits).all()));
        }
        return Choice.of(weights);
    }

    /// Whether there is any such column.
    boolean any() {
        return totals.all().signum() > 0;
    }

    /// Draws lengths of rows, and in `counts` how often each digit stands in them; the number of
    /// digits.
    int draw(Draws draws, int[] digits, int[] counts) {
        int all = fewest + totals.draw(draws);
        lengths.draw(all, draws, digits);
        if (least == most) {
            Arrays.fill(counts, least);
            return all;
        }
        counts[0] = least + zeros(all).draw(draws);
        int left = all - counts[0];
        for (int digit = 1; digit <= 9; digit++) {
            counts[digit] = least + others(10 - digit, left).draw(draws);
            left -= counts[digit];
        }
        return all;
    }

    private Choice zeros(int digits) {
        Choice known = zeros[digits];
        if (known == null) {
            known = choice(10, digits, digits - rows);
            zeros[digits] = known;
        }
        return known;
    }

    /// For `kinds` digits and so many places for them.
    private Choice others(int kinds, int places) {
        Choice known = others[kinds][places];
        if (known == null) {
            known = choice(kinds, places, places);
            others[kinds][places] = known;
        }
        return known;
    }

    private Choice choice(int kinds, int places, int open) {
        List<BigInteger> ways = new ArrayList<>();
        for (int count = least; count <= most; count++) {
            boolean fits = count <= open && enough(kinds - 1, places - count);
            ways.add(
                    fits
                            ? binomial(open, count).multiply(rest(kinds - 1, places - count))
                            : BigInteger.ZERO);
        }
        return Choice.of(ways);
    }

    private boolean enough(int kinds, int places) {
        return places >= (long) kinds * least && places <= (long) kinds * most;
    }

    private BigInteger rest(int kinds, int places) {
        return kinds == 0 ? BigInteger.ONE : others(kinds, places).all();
    }

    /// In how many ways so many can be chosen from so many.
    static BigInteger binomial(int from, int chosen) {
        BigInteger ways = BigInteger.ONE;
        for (int i = 1; i <= chosen; i++) {
            ways =
                    ways.multiply(BigInteger.valueOf(from - chosen + i))
                            .divide(BigInteger.valueOf(i));
        }
        return ways;
    }
}
