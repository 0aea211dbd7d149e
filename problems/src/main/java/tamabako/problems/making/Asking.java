package tamabako.problems.making;

import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/// What a wish asks of a set of products, quotients or roots.
///
/// @param wish the wish
/// @param count how many problems
/// @param splits how many splits of the digits there are
/// @param decimals how many of the problems have decimals
/// @param customs what the set keeps to
/// @param mayHaveInnerZero whether problems of a split can have a zero between other digits
record Asking(
        Wish wish,
        int count,
        int splits,
        int decimals,
        List<Custom> customs,
        IntPredicate mayHaveInnerZero) {

    static Asking of(ProductWish wish, int count, Drawing drawing) {
        int decimals = wish.numbers().decimals(count);
        return new Asking(
                wish, count, drawing.splits(), decimals, wish.customs(), drawing::mayHaveInnerZero);
    }

    static Asking of(QuotientWish wish, int count, Drawing drawing) {
        int decimals = wish.numbers().decimals(count);
        return new Asking(
                wish, count, drawing.splits(), decimals, wish.customs(), drawing::mayHaveInnerZero);
    }

    static Asking of(RootWish wish, int count, Drawing drawing) {
        return new Asking(wish, count, drawing.splits(), 0, List.of(), drawing::mayHaveInnerZero);
    }

    boolean evenSplits() {
        return customs.stream().anyMatch(Custom.EvenSplits.class::isInstance);
    }

    Optional<Custom.InnerZeros> innerZeros() {
        return customs.stream()
                .filter(Custom.InnerZeros.class::isInstance)
                .map(Custom.InnerZeros.class::cast)
                .findFirst();
    }
}
