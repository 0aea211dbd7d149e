package tamabako.problems.making;

import java.util.Arrays;
import tamabako.problems.making.column.Drawing;
import tamabako.problems.making.draw.Draws;

/// The strokes that each column of a set may take, where they have to be about as many in all.
///
/// The window lies where most columns are: it is found from some that are drawn apart, always from
/// the same seed, so that a set from another seed is as long to work.
record StrokeWindow(int least, int most) {

    private static final int LOOKED_AT = 40;

    private static final int TRIES = 100_000;

    static StrokeWindow of(ColumnWish wish, Drawing drawing) {
        return wish.strokesWithin().isPresent()
                ? widest(strokes(drawing), wish.strokesWithin().getAsInt())
                : new StrokeWindow(0, Integer.MAX_VALUE);
    }

    /// The strokes of some columns, from the fewest up.
    private static int[] strokes(Drawing drawing) {
        Draws draws = new Draws(0);
        int[] strokes = new int[LOOKED_AT];
        int found = 0;
        for (int i = 0; i < TRIES && found < LOOKED_AT; i++) {
            if (drawing.draw(draws)) {
                strokes[found++] = drawing.strokes();
            }
        }
        int[] sorted = Arrays.copyOf(strokes, found);
        Arrays.sort(sorted);
        return sorted;
    }

    /// The window that holds most of them.
    private static StrokeWindow widest(int[] sorted, int hundredths) {
        StrokeWindow best = new StrokeWindow(0, 0);
        int held = 0;
        for (int from = 0; from < sorted.length; from++) {
            int most = (int) ((100L + hundredths) * sorted[from] / 100);
            int to = from;
            while (to < sorted.length && sorted[to] <= most) {
                to++;
            }
            if (to - from > held) {
                held = to - from;
                best = new StrokeWindow(sorted[from], most);
            }
        }
        return best;
    }

    boolean holds(Drawing drawing) {
        return most == Integer.MAX_VALUE
                || (drawing.strokes() >= least && drawing.strokes() <= most);
    }
}
