package tamabako.problems.making;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Problem;
import tamabako.problems.Quotient;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Draws quotients: of a split, every exact quotient of whole numbers is equally likely.
///
/// With decimals, one in three is exact. Divisor, quotient and the places of their points are drawn
/// first, each equally likely among those that go together; then the dividend, each equally likely
/// among those whose quotient is rounded to the one drawn. No dividend is below 0.01.
record QuotientDrawing(QuotientWish wish, List<Split> all) implements Drawing {

    private static final BigDecimal LEAST_DIVIDEND = new BigDecimal("0.01");

    static QuotientDrawing of(QuotientWish wish) {
        return new QuotientDrawing(wish, Split.all(wish.digits(), wish.divisor(), wish.quotient()));
    }

    @Override
    public int splits() {
        return all.size();
    }

    @Override
    public boolean mayHaveInnerZero(int split) {
        return all.get(split).second() >= Split.WITH_INNER_ZERO;
    }

    @Override
    public Optional<Problem> draw(Draws draws, int number, boolean decimals) {
        Split split = all.get(number);
        long divisor = Factors.draw(draws, split.first());
        if (!decimals) {
            long quotient = Factors.drawAny(draws, split.second());
            BigDecimal by = BigDecimal.valueOf(divisor);
            return Optional.of(quotient(by.multiply(BigDecimal.valueOf(quotient)), by));
        }
        long quotient = Factors.drawAny(draws, split.second());
        if (quotient % 10 == 0) {
            return Optional.empty();
        }
        int places = (int) draws.between(0, split.first() + 1L);
        return draws.below(3) == 0
                ? exact(draws, divisor, places, quotient)
                : rounded(draws, divisor, places, quotient);
    }

    private Optional<Problem> exact(Draws draws, long divisor, int places, long quotient) {
        BigDecimal by = BigDecimal.valueOf(divisor, places);
        int most = wish.numbers() instanceof Numbers.Plain(int asked, _) ? asked : 0;
        int of = (int) draws.between(0, most);
        BigDecimal dividend = shown(by.multiply(BigDecimal.valueOf(quotient, of)));
        boolean whole = of == 0 && places == 0;
        return whole || isNoAmount(dividend) ? Optional.empty() : checked(dividend, by);
    }

    /// The dividend has fewer places than would keep it exact, down to where it could be missing.
    private Optional<Problem> rounded(Draws draws, long divisor, int places, long quotient) {
        boolean amount = wish.numbers() instanceof Numbers.Amounts;
        int exact = places + (wish.numbers() instanceof Numbers.Plain(int asked, _) ? asked : 0);
        int least = amount ? 0 : Math.max(0, exact - Powers.digits(divisor) + 1);
        int of = (int) draws.between(least, amount ? 0 : exact);
        BigDecimal unit = BigDecimal.ONE.scaleByPowerOfTen(exact - of).multiply(BigDecimal.TWO);
        BigDecimal twice = BigDecimal.valueOf(divisor);
        // As 2N of the unit lies from (2Q - 1) divisors to below (2Q + 1) divisors, Q is rounded.
        long first =
                whole(
                        twice.multiply(BigDecimal.valueOf(2 * quotient - 1)),
                        unit,
                        RoundingMode.CEILING);
        long last =
                whole(
                                twice.multiply(BigDecimal.valueOf(2 * quotient + 1)),
                                unit,
                                RoundingMode.CEILING)
                        - 1;
        if (first > last) {
            return Optional.empty();
        }
        BigDecimal dividend = shown(BigDecimal.valueOf(draws.between(first, last), of));
        BigDecimal by = BigDecimal.valueOf(divisor, places);
        return Rounded.of(quotient(dividend, by)) == Rounded.EXACT
                ? Optional.empty()
                : checked(dividend, by);
    }

    private static long whole(BigDecimal number, BigDecimal unit, RoundingMode mode) {
        return number.divide(unit, 0, mode).longValueExact();
    }

    private boolean isNoAmount(BigDecimal dividend) {
        return wish.numbers() instanceof Numbers.Amounts && dividend.scale() > 0;
    }

    private Optional<Problem> checked(BigDecimal dividend, BigDecimal divisor) {
        return dividend.compareTo(LEAST_DIVIDEND) < 0
                ? Optional.empty()
                : Optional.of(quotient(dividend, divisor));
    }

    private Quotient quotient(BigDecimal dividend, BigDecimal divisor) {
        return new Quotient("", dividend, divisor, wish.numbers().terms());
    }

    private static BigDecimal shown(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    @Override
    public Optional<BigInteger> there() {
        return wish.numbers().decimals() > 0
                ? Optional.empty()
                : all.stream()
                        .map(split ->
                                Factors.count(split.first())
                                        .multiply(Factors.countAny(split.second())))
                        .reduce(BigInteger::add);
    }

    @Override
    public boolean holds(Problem problem) {
        if (!(problem instanceof Quotient quotient) || !Look.isFactor(quotient.divisor())) {
            return false;
        }
        BigDecimal[] parts = quotient.dividend().divideAndRemainder(quotient.divisor());
        return parts[1].signum() == 0
                && parts[0].signum() > 0
                && all.contains(
                        new Split(
                                Look.figures(quotient.divisor()).length(),
                                parts[0].setScale(0, RoundingMode.UNNECESSARY).precision()));
    }
}
