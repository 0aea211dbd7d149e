package tamabako.problems.making;

import java.util.Optional;
import tamabako.problems.making.draw.Draws;

/// Draws whole columns and keeps those that grant the wish. Every column that grants it is as
/// likely as its rows are, so nothing is favoured; only rare wishes need another way.
final class WholeColumns implements Source {

    private final Asked asked;
    private final Rods rods;

    WholeColumns(Asked asked) {
        this.asked = asked;
        this.rods = new Rods(asked.wish().places());
    }

    @Override
    public Optional<long[]> draw(Draws draws) {
        boolean[] minus = asked.drawSigns(draws);
        long[] rows = new long[asked.rows()];
        int used = 0;
        for (int i = 0; i < rows.length; i++) {
            long size = asked.drawRow(draws);
            rows[i] = minus[i] ? -size : size;
            if (i == 0) {
                rods.set(size);
                continue;
            }
            if (rods.total() + rows[i] < 0 && !asked.wish().mayGoBelowZero()) {
                return Optional.empty();
            }
            int row = rods.work(rows[i]);
            if ((row & ~asked.allowed()) != 0) {
                return Optional.empty();
            }
            used |= row;
        }
        boolean granted =
                (used & asked.required()) == asked.required()
                        && Asked.repeats(rows) <= asked.fewestRepeats();
        return granted ? Optional.of(rows) : Optional.empty();
    }
}
