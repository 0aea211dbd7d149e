package tamabako.problems.making;

import java.util.Set;
import tamabako.problems.Problem;

/// Makes problems to a wish.
public final class Maker {

    /// The most problems that are made at once.
    public static final int MOST_PROBLEMS = 10_000;

    private Maker() {}

    /// `count` problems that grant `wish`, no two alike, drawn from `seed`: the same wish, count
    /// and seed give the same problems on every machine.
    public static Made make(Wish wish, int count, long seed) {
        return make(wish, count, seed, Set.of());
    }

    /// As without `avoided`, but none of these problems again, whatever they are named or under
    /// what terms they were asked.
    public static Made make(Wish wish, int count, long seed, Set<Problem> avoided) {
        Avoided not = Avoided.of(avoided);
        return Limits.broken(wish, count).orElseGet(() -> make(wish, count, seed, not));
    }

    private static Made make(Wish wish, int count, long seed, Avoided avoided) {
        return switch (wish) {
            case ColumnWish columns -> ColumnMaker.make(columns, count, seed, avoided);
            case ProductWish products -> {
                Drawing drawing = ProductDrawing.of(products);
                yield SetMaker.make(Asking.of(products, count, drawing), drawing, seed, avoided);
            }
            case QuotientWish quotients -> {
                Drawing drawing = QuotientDrawing.of(quotients);
                yield SetMaker.make(Asking.of(quotients, count, drawing), drawing, seed, avoided);
            }
            case RootWish roots -> {
                Drawing drawing = RootDrawing.of(roots);
                yield SetMaker.make(Asking.of(roots, count, drawing), drawing, seed, avoided);
            }
        };
    }
}
