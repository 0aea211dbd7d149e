package tamabako.problems.making;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Terms;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.words.Sayable;

/// Makes the columns of one set.
final class ColumnMaker {

    /// Columns in a row that were already there before the maker looks whether there are any more.
    private static final int MOST_ALIKE = 1000;

    /// The most columns that are listed to find those still missing.
    private static final int MOST_LISTED = 100_000;

    private final ColumnWish wish;
    private final int count;
    private final Draws draws;
    private final Avoided avoided;
    private final List<Problem> problems = new ArrayList<>();
    private final Set<List<BigDecimal>> seen = new HashSet<>();

    private ColumnMaker(ColumnWish wish, int count, long seed, Avoided avoided) {
        this.wish = wish;
        this.count = count;
        this.draws = new Draws(seed);
        this.avoided = avoided;
    }

    static Made make(ColumnWish wish, int count, long seed, Avoided avoided) {
        return switch (ColumnSearch.of(PlainColumns.of(wish))) {
            case Way.Drawn drawn -> new ColumnMaker(wish, count, seed, avoided).draw(drawn, seed);
            case Way.GaveUp(int tries) -> new Made.NotFound(wish, new Made.Reason.NoneFound(tries));
            case Way.Nothing() -> new Made.Impossible(wish, whyNothing(wish), Nearby.to(wish));
        };
    }

    private static Made.Reason whyNothing(ColumnWish wish) {
        List<Sayable> all = new ArrayList<>(List.of(wish.shape(), wish.signs()));
        all.addAll(wish.conditions());
        return new Made.Reason.Clash(all);
    }

    private Made draw(Way.Drawn way, long seed) {
        int alike = 0;
        while (problems.size() < count && alike < MOST_ALIKE) {
            Optional<long[]> rows = best(way);
            alike = rows.isPresent() && add(rows.get()) ? 0 : alike + 1;
        }
        return problems.size() == count ? new Made.Found(problems, seed) : fill(seed);
    }

    /// The first column with no more rows alike than must be, or the best of many.
    private Optional<long[]> best(Way.Drawn way) {
        Optional<long[]> best = Optional.empty();
        int fewest = Integer.MAX_VALUE;
        for (int i = 0; i < Asked.BEST_OF && fewest > way.repeats(); i++) {
            Optional<long[]> rows = way.source().draw(draws);
            if (rows.isPresent() && Asked.repeats(rows.get()) < fewest) {
                best = rows;
                fewest = Asked.repeats(rows.get());
            }
        }
        return best;
    }

    private boolean add(long[] rows) {
        Column column = column(rows);
        return wish.missedBy(column).isEmpty()
                && !avoided.contains(column)
                && seen.add(column.rows())
                && problems.add(column);
    }

    private Column column(long[] rows) {
        List<BigDecimal> numbers = new ArrayList<>(rows.length);
        for (long row : rows) {
            numbers.add(BigDecimal.valueOf(row, wish.shape().places()));
        }
        return new Column(Integer.toString(problems.size() + 1), numbers, Terms.PLAIN);
    }

    /// Chance brings no more: fills the set from the list of all columns, if they can be listed.
    private Made fill(long seed) {
        Optional<Completions> weighed = Completions.of(Asked.of(PlainColumns.of(wish), false));
        if (weighed.isEmpty()) {
            return new Made.NotFound(
                    wish, new Made.Reason.NoMoreFound(problems.size(), MOST_ALIKE));
        }
        List<long[]> all = weighed.get().all(MOST_LISTED);
        boolean listed = all.size() < MOST_LISTED;
        all.removeIf(rows -> avoided.contains(column(rows)));
        if (all.size() < count && !listed) {
            return new Made.NotFound(
                    wish, new Made.Reason.NoMoreFound(problems.size(), MOST_ALIKE));
        }
        if (all.size() < count) {
            return new Made.Impossible(
                    wish, new Made.Reason.OnlySoMany(count, all.size()), Optional.empty());
        }
        mix(all);
        all.sort(Comparator.comparingInt(Asked::repeats));
        for (long[] rows : all) {
            if (problems.size() < count) {
                add(rows);
            }
        }
        return new Made.Found(problems, seed);
    }

    private void mix(List<long[]> all) {
        for (int i = all.size() - 1; i > 0; i--) {
            Collections.swap(all, i, (int) draws.below(i + 1));
        }
    }
}
