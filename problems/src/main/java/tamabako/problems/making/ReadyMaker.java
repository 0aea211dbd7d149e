package tamabako.problems.making;

import java.util.Optional;
import java.util.Set;
import tamabako.problems.Problem;
import tamabako.problems.making.column.Search;
import tamabako.problems.making.column.Way;

/// Makes problems to one wish again and again: how its columns can be drawn is found once. It makes
/// what [Maker] makes. One thread uses it at a time.
public final class ReadyMaker {

    private final Wish wish;
    private final Optional<Way> way;

    private ReadyMaker(Wish wish, Optional<Way> way) {
        this.wish = wish;
        this.way = way;
    }

    /// A maker for `wish`.
    public static ReadyMaker of(Wish wish) {
        Optional<Way> way =
                wish instanceof ColumnWish columns && Limits.broken(wish, 1).isEmpty()
                        ? Optional.of(
                                Search.of(columns.shape(), columns.signs(), columns.conditions()))
                        : Optional.empty();
        return new ReadyMaker(wish, way);
    }

    /// `count` problems that grant the wish, no two alike and none of `avoided`, drawn from `seed`.
    public Made make(int count, long seed, Set<Problem> avoided) {
        return Limits.broken(wish, count)
                .or(() ->
                        way.map(found ->
                                ColumnMaker.make(
                                        (ColumnWish) wish,
                                        found,
                                        count,
                                        seed,
                                        Avoided.of(avoided))))
                .orElseGet(() -> Maker.make(wish, count, seed, avoided));
    }
}
