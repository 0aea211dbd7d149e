package tamabako.problems.making;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import tamabako.problems.making.draw.Draws;

/// Draws one row after the other from those that may follow. Rows that leave many ways to go on are
/// not favoured as they would have to be for an even draw, so this is only for wishes that are too
/// rare for [WholeColumns] and too large for [Completions].
///
/// Running totals stay at 0 or above.
final class RowByRow implements Source {

    /// How often a row is drawn anew that is like an earlier one.
    private static final int NEW_DRAWS = 5;

    private final Asked asked;
    private final Rods rods = new Rods(0);

    RowByRow(Asked asked) {
        this.asked = asked;
    }

    @Override
    public Optional<long[]> draw(Draws draws) {
        boolean[] minus = asked.drawSigns(draws);
        long[] rows = new long[asked.rows()];
        Set<Long> sizes = new HashSet<>();
        rows[0] = asked.drawRow(draws);
        sizes.add(rows[0]);
        rods.set(rows[0]);
        int used = 0;
        for (int i = 1; i < rows.length; i++) {
            long size = next(!minus[i], sizes, draws);
            if (size == 0) {
                return Optional.empty();
            }
            sizes.add(size);
            rows[i] = minus[i] ? -size : size;
            used |= rods.work(rows[i]);
        }
        boolean granted = (used & asked.required()) == asked.required();
        return granted ? Optional.of(rows) : Optional.empty();
    }

    /// A row that may follow, without its sign; 0 if there is none.
    private long next(boolean adding, Set<Long> sizes, Draws draws) {
        int lengths = asked.lengths();
        int turn = (int) draws.below(lengths);
        for (int i = 0; i < lengths; i++) {
            int length = asked.wish().leastDigits() + (turn + i) % lengths;
            LegalRows legal = new LegalRows(rods, asked.allowed(), adding, length);
            long[][] ways = legal.count();
            if (ways[length][0] + ways[length][1] > 0) {
                long size = legal.draw(ways, draws);
                for (int again = 0; again < NEW_DRAWS && sizes.contains(size); again++) {
                    size = legal.draw(ways, draws);
                }
                return size;
            }
        }
        return 0;
    }
}
