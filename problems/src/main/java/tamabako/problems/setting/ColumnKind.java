package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import tamabako.problems.grade.Share;
import tamabako.problems.grade.Signs;
import tamabako.problems.making.draw.Draws;

/// Which of its columns a batch asks for on each place.
enum ColumnKind {
    ADDED,
    MIXED,
    DIPPING,
    NEGATIVE;

    /// Of so many mixed columns whose total may fall below zero on the way, one does. Common
    /// practice, no published source.
    private static final int DIPPING_ONE_OF = 3;

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /// A kind for each place of a batch of `count` columns: the shares of the halves are kept, and
    /// every order that keeps them is equally likely.
    ///
    /// @throws IndexOutOfBoundsException if a half has not so many places
    static List<ColumnKind> places(int count, Signs signs, Draws draws) {
        List<ColumnKind> kinds = new ArrayList<>(Collections.nCopies(count, ADDED));
        Share mixed = signs.mixed();
        Share negative = signs.negative();
        if (mixed.inSecondHalf().isPresent()) {
            place(kinds, ADDED, MIXED, mixed, draws);
            place(kinds, MIXED, NEGATIVE, negative, draws);
        } else {
            place(kinds, ADDED, NEGATIVE, negative, draws);
            int others = mixed.count() - negative.count();
            place(kinds, ADDED, MIXED, Share.anywhere(others), draws);
        }
        if (signs.mayDip()) {
            int others = mixed.count() - negative.count();
            Share dipping = Share.anywhere((others + DIPPING_ONE_OF - 1) / DIPPING_ONE_OF);
            place(kinds, MIXED, DIPPING, dipping, draws);
        }
        return kinds;
    }

    /// Makes `share` of the places of kind `from` places of kind `to`.
    private static void place(
            List<ColumnKind> kinds, ColumnKind from, ColumnKind to, Share share, Draws draws) {
        int half = kinds.size() / 2;
        OptionalInt first = share.inFirstHalf();
        if (first.isEmpty()) {
            turn(kinds, from, to, share.count(), draws);
        } else {
            int second = share.count() - first.getAsInt();
            turn(kinds.subList(0, half), from, to, first.getAsInt(), draws);
            turn(kinds.subList(half, kinds.size()), from, to, second, draws);
        }
    }

    private static void turn(
            List<ColumnKind> kinds, ColumnKind from, ColumnKind to, int count, Draws draws) {
        List<Integer> places =
                Shuffled.of(
                        IntStream.range(0, kinds.size())
                                .filter(place -> kinds.get(place) == from)
                                .boxed()
                                .toList(),
                        draws);
        places.subList(0, count).forEach(place -> kinds.set(place, to));
    }
}
