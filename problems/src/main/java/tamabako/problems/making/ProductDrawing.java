package tamabako.problems.making;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.making.draw.Draws;

/// Draws products: of a split, every product of whole numbers is equally likely.
///
/// With decimals, every pair of whole numbers and every place of their points is equally likely
/// among those whose rounded answer has three digits or as many as the longer factor. A factor has
/// one zero behind its point at most; an amount has no decimals, its multiplier has.
record ProductDrawing(ProductWish wish, List<Split> all) implements Drawing {

    static ProductDrawing of(ProductWish wish) {
        return new ProductDrawing(
                wish, Split.all(wish.digits(), wish.multiplicand(), wish.multiplier()));
    }

    @Override
    public int splits() {
        return all.size();
    }

    @Override
    public boolean mayHaveInnerZero(int split) {
        return Math.max(all.get(split).first(), all.get(split).second()) >= Split.WITH_INNER_ZERO;
    }

    @Override
    public Optional<Problem> draw(Draws draws, int number, boolean decimals) {
        Split split = all.get(number);
        long multiplicand = Factors.draw(draws, split.first());
        long multiplier = Factors.draw(draws, split.second());
        boolean amount = wish.numbers() instanceof Numbers.Amounts;
        int left = decimals && !amount ? (int) draws.between(0, split.first() + 1L) : 0;
        int right = decimals ? (int) draws.between(amount ? 1 : 0, split.second() + 1L) : 0;
        Product product =
                new Product(
                        "",
                        BigDecimal.valueOf(multiplicand, left),
                        BigDecimal.valueOf(multiplier, right),
                        wish.numbers().terms());
        return !decimals || (left + right > 0 && isLong(product, split))
                ? Optional.of(product)
                : Optional.empty();
    }

    private static boolean isLong(Product product, Split split) {
        BigDecimal answer = product.answer().value();
        int fewest = Math.min(3, Math.max(split.first(), split.second()));
        return answer.signum() > 0 && answer.precision() >= fewest;
    }

    @Override
    public Optional<BigInteger> there() {
        return wish.numbers().decimals() > 0
                ? Optional.empty()
                : all.stream()
                        .map(split ->
                                Factors.count(split.first())
                                        .multiply(Factors.count(split.second())))
                        .reduce(BigInteger::add);
    }

    @Override
    public boolean holds(Problem problem) {
        return problem instanceof Product product
                && Look.isFactor(product.multiplicand())
                && Look.isFactor(product.multiplier())
                && all.contains(
                        new Split(
                                Look.figures(product.multiplicand()).length(),
                                Look.figures(product.multiplier()).length()));
    }
}
