package tamabako.problems.making;

/// Makes problems to a wish.
public final class Maker {

    /// The most problems that are made at once.
    public static final int MOST_PROBLEMS = 10_000;

    private Maker() {}

    /// `count` problems that grant `wish`, no two alike, drawn from `seed`: the same wish, count
    /// and seed give the same problems on every machine.
    public static Made make(Wish wish, int count, long seed) {
        return Limits.broken(wish, count)
                .orElseGet(() ->
                        switch (wish) {
                            case ColumnWish columns -> ColumnMaker.make(columns, count, seed);
                            case ProductWish products -> PlainMaker.of(products).make(count, seed);
                            case QuotientWish quotients ->
                                    PlainMaker.of(quotients).make(count, seed);
                            case RootWish roots -> PlainMaker.of(roots).make(count, seed);
                        });
    }
}
