package tamabako.problems.making;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tamabako.frame.Technique;

/// Looks for a wish that can be granted close to one that cannot.
final class Nearby {

    private Nearby() {}

    /// The nearest: a minus row more or less, then a row, and so on; then one more technique
    /// allowed; then all of them, with none required.
    static Optional<Wish> to(ColumnWish wish) {
        return Stream.of(resized(wish), taught(wish), Stream.of(open(wish)))
                .flatMap(wishes -> wishes)
                .filter(nearby -> ColumnSearch.of(PlainColumns.of(nearby)) instanceof Way.Drawn)
                .map(Wish.class::cast)
                .findFirst();
    }

    private static Stream<ColumnWish> resized(ColumnWish wish) {
        return IntStream.range(1, wish.rows())
                .boxed()
                .flatMap(by ->
                        Stream.of(
                                wish.withMinusRows(wish.signs().leastMinus() + by),
                                wish.withMinusRows(wish.signs().leastMinus() - by),
                                wish.withRows(wish.rows() - by),
                                wish.withRows(wish.rows() + by)))
                .filter(nearby -> Limits.broken(nearby, 1).isEmpty());
    }

    private static Stream<ColumnWish> taught(ColumnWish wish) {
        return EnumSet.allOf(Technique.class).stream()
                .filter(technique -> !wish.allowed().contains(technique))
                .map(technique -> {
                    Set<Technique> more = EnumSet.of(technique);
                    more.addAll(wish.allowed());
                    return wish.allowing(more);
                });
    }

    private static ColumnWish open(ColumnWish wish) {
        return wish.allowing(EnumSet.allOf(Technique.class))
                .requiring(EnumSet.noneOf(Technique.class));
    }
}
