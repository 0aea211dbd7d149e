package tamabako.problems.making;

import java.math.BigDecimal;
import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Terms;
import tamabako.problems.making.column.Drawing;
import tamabako.problems.making.column.Search;
import tamabako.problems.making.column.Way;
import tamabako.problems.making.draw.Draws;

/// Makes the columns of one set.
final class ColumnMaker {

    /// Columns in a row that were already there before the maker looks whether there are any more.
    private static final int MOST_ALIKE = 1000;

    /// Tries in a row that come to nothing before it gives up.
    private static final int MOST_TRIES = 100_000;

    /// The most columns that are listed to find those still missing.
    private static final int MOST_LISTED = 100_000;

    private final ColumnWish wish;
    private final int count;
    private final Drawing drawing;
    private final Draws draws;
    private final StrokeWindow strokes;
    private final Avoided avoided;
    private final List<Problem> problems = new ArrayList<>();
    private final Set<LongBuffer> seen = new HashSet<>();

    private ColumnMaker(ColumnWish wish, int count, Drawing drawing, long seed, Avoided avoided) {
        this.wish = wish;
        this.count = count;
        this.drawing = drawing;
        this.draws = new Draws(seed);
        this.strokes = StrokeWindow.of(wish, drawing);
        this.avoided = avoided;
    }

    static Made make(ColumnWish wish, int count, long seed, Avoided avoided) {
        Way way = Search.of(wish.shape(), wish.signs(), wish.conditions());
        return make(wish, way, count, seed, avoided);
    }

    /// Columns that are drawn in a `way` that was found already.
    static Made make(ColumnWish wish, Way way, int count, long seed, Avoided avoided) {
        return switch (way) {
            case Way.Drawn(Drawing drawing) ->
                    new ColumnMaker(wish, count, drawing, seed, avoided).make(seed);
            case Way.GaveUp(int tries) -> new Made.NotFound(wish, new Made.Reason.NoneFound(tries));
            case Way.Nothing(var clash) ->
                    new Made.Impossible(wish, new Made.Reason.Clash(clash), Nearby.to(wish, clash));
        };
    }

    private Made make(long seed) {
        int alike = 0;
        int tries = 0;
        while (problems.size() < count && alike < MOST_ALIKE && tries < MOST_TRIES) {
            tries++;
            if (drawing.draw(draws) && strokes.holds(drawing)) {
                tries = 0;
                alike = add(drawn()) ? 0 : alike + 1;
            }
        }
        return problems.size() == count ? new Made.Found(problems, seed) : fill(seed);
    }

    private long[] drawn() {
        long[] rows = new long[wish.rows()];
        for (int row = 0; row < rows.length; row++) {
            rows[row] = drawing.number(row);
        }
        return rows;
    }

    private boolean add(long[] rows) {
        if (!seen.add(LongBuffer.wrap(rows))) {
            return false;
        }
        Column column = column(rows);
        return !avoided.contains(column) && problems.add(column);
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
        Optional<List<long[]>> listed =
                wish.strokesWithin().isPresent() ? Optional.empty() : drawing.all(MOST_LISTED);
        if (listed.isEmpty()) {
            return new Made.NotFound(
                    wish, new Made.Reason.NoMoreFound(problems.size(), MOST_ALIKE));
        }
        List<long[]> all = new ArrayList<>(listed.get());
        all.removeIf(rows -> avoided.contains(column(rows)));
        if (all.size() < count) {
            return new Made.Impossible(
                    wish, new Made.Reason.OnlySoMany(count, all.size()), Optional.empty());
        }
        mix(all);
        for (long[] rows : all) {
            if (problems.size() < count) {
                add(rows);
            }
        }
        return new Made.Found(problems, seed);
    }

    private void mix(List<long[]> all) {
        for (int i = all.size() - 1; i > 0; i--) {
            Collections.swap(all, i, draws.pick(i + 1));
        }
    }
}
