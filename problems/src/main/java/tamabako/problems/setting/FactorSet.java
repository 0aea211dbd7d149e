package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Format.Answers;
import tamabako.problems.grade.Format.Rounded;
import tamabako.problems.grade.Span;
import tamabako.problems.making.Custom;
import tamabako.problems.making.Digits;
import tamabako.problems.making.Numbers;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;
import tamabako.problems.making.Wish;

/// So many products, quotients or roots to one wish, and the customs they keep as a set.
///
/// @param wish what a paper needs; even splits, no ties and inner zeros are asked of the maker, and
///   the other customs reached by choice
/// @param spare the same for problems to choose from
record FactorSet(Wish wish, Wish spare, int count, FactorCustoms customs) {

    /// So many times the problems needed are made to choose from.
    static final int SPARES = 3;

    /// Sets for the products of a batch.
    ///
    /// @param isFirst whether it is the first of its kind in the section
    static List<FactorSet> each(
            Format.Products format, int count, boolean isFirst, SettersCustoms customs) {
        Digits multiplicand = digits(format.multiplicand());
        Digits multiplier = digits(format.multiplier());
        Numbers numbers = numbers(format.answers(), count);
        return each(
                format.inAll(),
                count,
                (digits, share) -> {
                    ProductWish wish =
                            ProductWish.inAll(digits, multiplicand, multiplier).with(numbers);
                    List<Custom> usual = kept(customs, wish.withUsualCustoms().customs());
                    return new FactorSet(
                            wish.keeping(asked(usual, share, isFirst)),
                            wish.keeping(asked(usual, SPARES * share, isFirst)),
                            share,
                            FactorCustoms.of(
                                    usual, format.answers(), numbers.decimals(share), share));
                });
    }

    /// Sets for the quotients of a batch.
    ///
    /// @param isFirst whether it is the first of its kind in the section
    static List<FactorSet> each(
            Format.Quotients format, int count, boolean isFirst, SettersCustoms customs) {
        Digits divisor = digits(format.divisor());
        Digits quotient = digits(format.quotient());
        Numbers numbers = numbers(format.answers(), count);
        return each(
                format.inAll(),
                count,
                (digits, share) -> {
                    QuotientWish wish = QuotientWish.inAll(digits, divisor, quotient).with(numbers);
                    List<Custom> usual = kept(customs, wish.withUsualCustoms().customs());
                    return new FactorSet(
                            wish.keeping(asked(usual, share, isFirst)),
                            wish.keeping(asked(usual, SPARES * share, isFirst)),
                            share,
                            FactorCustoms.of(
                                    usual, format.answers(), numbers.decimals(share), share));
                });
    }

    /// The set for the roots of a batch.
    static List<FactorSet> each(Format.Roots format, int count, SettersCustoms customs) {
        Wish wish = new RootWish(format.degree(), digits(format.digits()), OptionalInt.empty());
        return List.of(new FactorSet(wish, wish, count, FactorCustoms.balance(customs)));
    }

    /// As many problems of each number of digits in all, the odd ones of the shorter.
    private static List<FactorSet> each(
            Span inAll, int count, BiFunction<Integer, Integer, FactorSet> set) {
        int totals = inAll.most() - inAll.least() + 1;
        List<FactorSet> sets = new ArrayList<>();
        for (int i = 0; i < totals; i++) {
            int share = count / totals + (i < count % totals ? 1 : 0);
            if (share > 0) {
                sets.add(set.apply(inAll.least() + i, share));
            }
        }
        return sets;
    }

    private static List<Custom> kept(SettersCustoms customs, List<Custom> usual) {
        return switch (customs) {
            case KEPT -> usual;
            case LEFT_OUT -> List.of();
        };
    }

    /// Those of the `usual` customs that the maker plans without drawing sets in vain.
    private static List<Custom> asked(List<Custom> usual, int count, boolean isFirst) {
        return usual.stream()
                .flatMap(custom ->
                        switch (custom) {
                            case Custom.EvenSplits _, Custom.NoTies _ -> Stream.of(custom);
                            case Custom.InnerZeros _ -> Stream.of(innerZeros(count, isFirst));
                            case Custom.BothRoundings _,
                                    Custom.SomeShort _,
                                    Custom.Revised _,
                                    Custom.EvenDigits _,
                                    Custom.FewLeadingOnes _,
                                    Custom.DifferentFirstDigits _ ->
                                    Stream.empty();
                        })
                .toList();
    }

    /// One or two problems of twenty in a section have a zero between other digits. Common
    /// practice, no published source.
    private static Custom innerZeros(int count, boolean isFirst) {
        int least = isFirst ? Math.max(1, count / 20) : count / 20;
        return new Custom.InnerZeros(least, Math.max(least, count / 10));
    }

    private static Numbers numbers(Answers answers, int count) {
        int share = (100 * answers.decimals() + count / 2) / count;
        Optional<Integer> places = answers.rounded().map(Rounded::places);
        return answers.unit()
                .map(unit -> (Numbers) new Numbers.Amounts(unit, share))
                .or(() -> places.map(asked -> new Numbers.Plain(asked, share)))
                .orElseGet(Numbers.Whole::new);
    }

    private static Digits digits(Span span) {
        return new Digits(span.least(), span.most());
    }
}
