package tamabako.bench.insight;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import tamabako.problems.Column;
import tamabako.problems.Terms;

/// Columns to be tried: so many rows of so many digits, three rows in ten taken where the total
/// allows it.
record ColumnPlan(int rows, int digits) {

    private static final int MINUS_IN_TEN = 3;

    List<Long> draw(SplittableRandom random) {
        List<Long> drawn = new ArrayList<>();
        long total = 0;
        long least = Math.powExact(10L, digits - 1);
        for (int i = 0; i < rows; i++) {
            long row = random.nextLong(least, 10 * least);
            row = random.nextInt(10) < MINUS_IN_TEN && total >= row ? -row : row;
            total += row;
            drawn.add(row);
        }
        return drawn;
    }

    static Column column(List<Long> rows) {
        return new Column("1", rows.stream().map(BigDecimal::valueOf).toList(), Terms.PLAIN);
    }

    @Override
    public String toString() {
        return rows + " × " + digits;
    }
}
