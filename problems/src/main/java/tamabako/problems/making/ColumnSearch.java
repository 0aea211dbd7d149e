package tamabako.problems.making;

import java.util.List;
import java.util.Optional;
import tamabako.frame.Technique;
import tamabako.problems.making.draw.Draws;

/// Finds the way to draw columns for a wish: evenly where that is cheap; and where nothing is
/// found, with the proof that there is nothing if the wish is small enough.
///
/// The way depends on the wish only, not on the seed of the problems.
final class ColumnSearch {

    /// Tries before a search gives up.
    static final int TRIES = 20_000;

    /// Whole columns are drawn if so many of the first tries succeed.
    private static final int ENOUGH = 5;

    private static final int FIRST_TRIES = 500;

    /// The work that is done for an even draw before an uneven one is tried.
    private static final double EASY_WORK = 50_000_000;

    /// Columns of up to so many digits do not end with a minus row if that can be. Common practice,
    /// no published source.
    private static final int SMALL = 2;

    /// Rows of more digits are too long for [Completions].
    private static final int LONG = 3;

    private ColumnSearch() {}

    static Way of(PlainColumns wish) {
        boolean carries = wish.allowed().stream().anyMatch(Technique::passesTen);
        if (carries) {
            return search(wish);
        }
        // Without a borrow no total falls below zero.
        PlainColumns above = wish.goingBelowZero(false);
        boolean isLong = wish.mostDigits() > LONG && wish.leastDigits() == wish.mostDigits();
        return isLong && search(twoDigits(above)) instanceof Way.Nothing
                ? new Way.Nothing()
                : search(above);
    }

    /// Without carries every place of a column goes its own way. The highest has a digit in each
    /// row, and of the others one is enough to show whatever technique the highest does not; so
    /// columns of many digits exist only if columns of two do.
    private static PlainColumns twoDigits(PlainColumns wish) {
        return wish.withPlaces(0).withDigits(2, 2);
    }

    private static Way search(PlainColumns wish) {
        boolean canEndPlus = wish.minusRows() > 0 && wish.minusRows() <= wish.rows() - 2;
        if (canEndPlus && wish.mostDigits() <= SMALL) {
            Way way = of(Asked.of(wish, true));
            if (way instanceof Way.Drawn) {
                return way;
            }
        }
        return of(Asked.of(wish, false));
    }

    private static Way of(Asked asked) {
        Source whole = new WholeColumns(asked);
        Source rows = new RowByRow(asked);
        if (successes(whole, FIRST_TRIES) >= ENOUGH) {
            return new Way.Drawn(whole, asked.fewestRepeats());
        }
        boolean easy = Completions.mostWork(asked) <= EASY_WORK;
        if (!easy && successes(rows, TRIES / 10) > 0) {
            return drawn(asked, rows);
        }
        Optional<Completions> weighed = Completions.of(asked);
        if (weighed.isPresent()) {
            return weighed.get().any() ? drawn(asked, weighed.get()) : new Way.Nothing();
        }
        return List.of(rows, whole).stream()
                .filter(source -> successes(source, TRIES) > 0)
                .findFirst()
                .map(source -> drawn(asked, source))
                .orElseGet(() -> new Way.GaveUp(TRIES));
    }

    private static Way drawn(Asked asked, Source source) {
        Draws draws = new Draws(0);
        int fewest = asked.rows();
        for (int i = 0; i < Asked.BEST_OF && fewest > asked.fewestRepeats(); i++) {
            Optional<long[]> rows = source.draw(draws);
            if (rows.isPresent()) {
                fewest = Math.min(fewest, Asked.repeats(rows.get()));
            }
        }
        return new Way.Drawn(source, fewest);
    }

    private static int successes(Source source, int tries) {
        Draws draws = new Draws(0);
        int found = 0;
        for (int i = 0; i < tries && found < ENOUGH; i++) {
            found += source.draw(draws).isPresent() ? 1 : 0;
        }
        return found;
    }
}
