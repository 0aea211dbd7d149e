package tamabako.problems.making.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.making.draw.Draws;

/// Finds the way to draw columns for what is asked: evenly where chance meets it often enough, else
/// by moving them; and where nothing is found, the proof that there is nothing, if there is one.
///
/// The way depends on what is asked only, not on the seed of the problems.
public final class Search {

    /// Tries of each even source.
    private static final int TRIES = 20_000;

    /// So many of them have to succeed.
    private static final int ENOUGH = 10;

    /// Tries of a source of columns to be moved.
    private static final int STARTS = 500;

    /// Columns that are moved about until one is as asked.
    private static final int MOVED = 12;

    /// Ways that are followed to count, and to prove that there is nothing.
    private static final long COUNTING_WORK = 4_000_000;

    private static final long PROVING_WORK = 2_000_000;

    private Search() {}

    /// The way for columns of `shape` and `signs` that meet `conditions`.
    public static Way of(Shape shape, Signs signs, List<Condition> conditions) {
        Asked asked = Asked.of(shape, signs, conditions);
        if (Contradictions.areIn(asked)) {
            return new Way.Nothing(Clash.in(asked));
        }
        Optional<Drawing> drawing = drawing(asked);
        if (drawing.isPresent()) {
            return new Way.Drawn(drawing.get());
        }
        return Proof.isThereNone(asked, PROVING_WORK)
                ? new Way.Nothing(Clash.in(asked))
                : new Way.GaveUp(MOVED * Mixing.MOST_MOVES);
    }

    /// Whether such columns are found; not finding them proves nothing.
    public static boolean finds(Shape shape, Signs signs, List<Condition> conditions) {
        Asked asked = Asked.of(shape, signs, conditions);
        return !Contradictions.areIn(asked) && drawing(asked).isPresent();
    }

    private static Optional<Drawing> drawing(Asked asked) {
        List<Source> even = new ArrayList<>();
        Optional<RodCounts> rods = RodCounts.of(asked);
        if (rods.isPresent()) {
            if (rods.get().count().signum() == 0) {
                return Optional.empty();
            }
            even.add(rods.get());
        } else if (!asked.allowsAll()) {
            Optional<Completions> counts = Completions.of(asked, COUNTING_WORK);
            if (counts.filter(Search::isNone).isPresent()) {
                return Optional.empty();
            }
            counts.ifPresent(even::add);
        }
        asked.digitsEach().ifPresent(each -> even.add(bags(asked, each)));
        if (even.isEmpty()) {
            even.add(new WholeColumns(asked));
        }
        return drawing(asked, even);
    }

    private static Optional<Drawing> drawing(Asked asked, List<Source> even) {
        Optional<Drawing> seldom = Optional.empty();
        for (Source source : even) {
            Source kept = new Rejecting(source, asked.conditions());
            int found = found(kept, asked, TRIES, ENOUGH);
            if (found == ENOUGH) {
                return Optional.of(new Drawing(asked, kept, true));
            }
            if (found > 0) {
                seldom = Optional.of(new Drawing(asked, kept, true));
            }
        }
        // Dear to count, so only where chance finds nothing.
        if (seldom.isEmpty()
                && asked.allowsAll()
                && Completions.of(asked, COUNTING_WORK).filter(Search::isNone).isPresent()) {
            return Optional.empty();
        }
        Source mixing = new Mixing(asked, start(asked));
        return found(mixing, asked, MOVED, 1) > 0
                ? Optional.of(new Drawing(asked, mixing, false))
                : seldom;
    }

    private static boolean isNone(Completions counts) {
        return counts.weight().signum() == 0;
    }

    private static Source bags(Asked asked, DigitCondition.DigitsEach each) {
        return LeadColumns.of(asked, each)
                .orElseGet(() -> BagColumns.of(asked, new Bags(asked, each)));
    }

    /// Where columns come from that are moved about then: from those that keep as much as can be
    /// kept without moving, as long as any come.
    private static Source start(Asked asked) {
        Source near =
                asked.digitsEach()
                        .map(each -> bags(asked, each))
                        .orElseGet(() -> new WholeColumns(asked));
        return found(near, asked, STARTS, ENOUGH) == ENOUGH ? near : farStart(asked);
    }

    private static Source farStart(Asked asked) {
        Optional<Source> bags =
                asked.digitsEach().map(each -> BagColumns.unbounded(asked, new Bags(asked, each)));
        return bags.orElseGet(() -> WholeColumns.unbounded(asked));
    }

    private static int found(Source source, Asked asked, int tries, int enough) {
        Draws draws = new Draws(0);
        Facts facts = asked.facts();
        int found = 0;
        for (int i = 0; i < tries && found < enough; i++) {
            found += source.draw(draws, facts) ? 1 : 0;
        }
        return found;
    }
}
