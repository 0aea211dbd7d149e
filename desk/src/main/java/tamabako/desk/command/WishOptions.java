package tamabako.desk.command;

import java.util.Set;
import java.util.stream.Collectors;
import tamabako.frame.Technique;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;
import tamabako.problems.making.Wish;
import tamabako.problems.making.column.Lengths;

/// A wish as the options of `make`, to be typed again.
final class WishOptions {

    private WishOptions() {}

    static String of(Wish wish) {
        return switch (wish) {
            case ColumnWish column -> column(column);
            case ProductWish products ->
                    "--kind product --multiplicand %d --multiplier %d"
                            .formatted(
                                    products.multiplicand().most(), products.multiplier().most());
            case QuotientWish quotients ->
                    "--kind quotient --divisor %d --quotient %d"
                            .formatted(quotients.divisor().most(), quotients.quotient().most());
            case RootWish roots ->
                    "--kind root --degree %d --root-digits %d"
                            .formatted(roots.degree(), roots.digits().most());
        };
    }

    private static String column(ColumnWish wish) {
        StringBuilder options = new StringBuilder();
        options.append("--rows ").append(wish.rows());
        Lengths lengths = wish.shape().lengths();
        int minus = wish.signs().leastMinus();
        int places = wish.shape().places();
        options.append(" --digits ").append(lengths.least());
        options.append(lengths.most() == lengths.least() ? "" : "-" + lengths.most());
        options.append(minus > 0 ? " --minus " + minus : "");
        options.append(places > 0 ? " --places " + places : "");
        if (wish.allowed().size() < Technique.values().length) {
            options.append(" --techniques ").append(words(wish.allowed()));
        }
        options.append(wish.required().isEmpty() ? "" : " --require " + words(wish.required()));
        options.append(wish.mayGoBelowZero() ? " --below-zero" : "");
        return options.toString();
    }

    private static String words(Set<Technique> techniques) {
        return techniques.stream().map(Technique::word).collect(Collectors.joining(","));
    }
}
