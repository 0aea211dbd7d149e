package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
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

/// So many products, quotients or roots to one wish.
record FactorSet(Wish wish, int count) {

    /// Sets for the products of a batch.
    ///
    /// @param isFirst whether it is the first of its kind in the section
    static List<FactorSet> each(Format.Products format, int count, boolean isFirst) {
        Digits multiplicand = digits(format.multiplicand());
        Digits multiplier = digits(format.multiplier());
        Numbers numbers = numbers(format.answers(), count);
        return each(
                format.inAll(),
                count,
                (digits, share) -> {
                    ProductWish wish =
                            ProductWish.inAll(digits, multiplicand, multiplier).with(numbers);
                    List<Custom> usual = wish.withUsualCustoms().customs();
                    return wish.keeping(
                            new FactorCustoms(share, numbers.decimals(share), isFirst)
                                    .of(usual, format.answers()));
                });
    }

    /// Sets for the quotients of a batch.
    ///
    /// @param isFirst whether it is the first of its kind in the section
    static List<FactorSet> each(Format.Quotients format, int count, boolean isFirst) {
        Digits divisor = digits(format.divisor());
        Digits quotient = digits(format.quotient());
        Numbers numbers = numbers(format.answers(), count);
        return each(
                format.inAll(),
                count,
                (digits, share) -> {
                    QuotientWish wish = QuotientWish.inAll(digits, divisor, quotient).with(numbers);
                    List<Custom> usual = wish.withUsualCustoms().customs();
                    return wish.keeping(
                            new FactorCustoms(share, numbers.decimals(share), isFirst)
                                    .of(usual, format.answers()));
                });
    }

    /// Sets for the roots of a batch.
    static List<FactorSet> each(Format.Roots format, int count) {
        return List.of(
                new FactorSet(
                        new RootWish(format.degree(), digits(format.digits()), OptionalInt.empty()),
                        count));
    }

    /// As many problems of each number of digits in all, the odd ones of the shorter.
    private static List<FactorSet> each(
            Span inAll, int count, BiFunction<Integer, Integer, Wish> wish) {
        int totals = inAll.most() - inAll.least() + 1;
        List<FactorSet> sets = new ArrayList<>();
        for (int i = 0; i < totals; i++) {
            int share = count / totals + (i < count % totals ? 1 : 0);
            if (share > 0) {
                sets.add(new FactorSet(wish.apply(inAll.least() + i, share), share));
            }
        }
        return sets;
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
