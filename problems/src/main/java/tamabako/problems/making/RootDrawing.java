package tamabako.problems.making;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tamabako.frame.Rounding;
import tamabako.problems.Problem;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Draws roots: of so many digits, every exact root is equally likely; to places, every radicand
/// that has no exact root.
record RootDrawing(RootWish wish, List<Integer> all) implements Drawing {

    static RootDrawing of(RootWish wish) {
        return new RootDrawing(wish, wish.digits().all().boxed().toList());
    }

    @Override
    public int splits() {
        return all.size();
    }

    @Override
    public boolean mayHaveInnerZero(int split) {
        return all.get(split) >= Split.WITH_INNER_ZERO;
    }

    @Override
    public Optional<Problem> draw(Draws draws, int split, boolean decimals) {
        int digits = all.get(split);
        if (wish.places().isEmpty()) {
            BigDecimal root = BigDecimal.valueOf(Factors.draw(draws, digits));
            return Optional.of(root(root.pow(wish.degree()), Terms.PLAIN));
        }
        long least = Powers.of(wish.degree() * (digits - 1));
        long most = Powers.of(wish.degree() * digits) - 1;
        BigDecimal of = BigDecimal.valueOf(draws.between(least, most));
        Root down = root(of, Terms.PLAIN.withRounding(Rounding.DOWN));
        boolean exact = down.answer().remainder().orElseThrow().signum() == 0;
        return exact
                ? Optional.empty()
                : Optional.of(root(of, Terms.PLAIN.withPlaces(wish.places().getAsInt())));
    }

    private Root root(BigDecimal of, Terms terms) {
        return new Root("", wish.degree(), of, terms);
    }

    @Override
    public Optional<BigInteger> there() {
        return all.stream().map(this::there).reduce(BigInteger::add);
    }

    private BigInteger there(int digits) {
        if (wish.places().isEmpty()) {
            return Factors.count(digits);
        }
        return Factors.countAny(wish.degree() * digits)
                .add(radicandsBelow(digits))
                .subtract(Factors.countAny(digits));
    }

    /// The radicands of a root of `digits` digits that have fewer than `degree * digits` digits.
    private BigInteger radicandsBelow(int digits) {
        int most = wish.degree() * digits;
        return IntStream.range(wish.degree() * (digits - 1) + 1, most)
                .mapToObj(Factors::countAny)
                .reduce(BigInteger.ZERO, BigInteger::add);
    }

    @Override
    public boolean holds(Problem problem) {
        if (!(problem instanceof Root root) || root.degree() != wish.degree()) {
            return false;
        }
        Root down = root(root.of(), Terms.PLAIN.withRounding(Rounding.DOWN));
        boolean exact = down.answer().remainder().orElseThrow().signum() == 0;
        BigDecimal value = down.answer().value();
        boolean whole = root.of().stripTrailingZeros().scale() <= 0 && value.signum() > 0;
        return whole
                && wish.digits().holds(value.precision())
                && exact == wish.places().isEmpty()
                && (!exact || Look.isFactor(value));
    }
}
