package tamabako.problems.making.column;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import tamabako.frame.walk.Tally;
import tamabako.problems.making.draw.Powers;

/// The rows that may come next on a total, by the allowed techniques alone; found once for each
/// total and sign.
final class NextRows {

    private final Lengths lengths;
    private final RowSteps steps;
    private final int required;
    private final Rows first;

    /// By total: rows to be added, and rows to be taken.
    private final @Nullable Rows[] added;

    private final @Nullable Rows[] taken;

    NextRows(Asked asked) {
        this.lengths = asked.shape().lengths();
        this.steps = new RowSteps(asked.allowed());
        this.required = Tally.bits(asked.required());
        this.added = new Rows[mostTotal(asked.shape()) + 1];
        this.taken = new Rows[added.length];
        this.first = new Rows();
        for (long row = Powers.of(lengths.least() - 1); row < Powers.of(lengths.most()); row++) {
            first.add(row, 0);
        }
    }

    /// No total is larger.
    static int mostTotal(Shape shape) {
        return shape.rows() * (int) (Powers.of(shape.lengths().most()) - 1);
    }

    /// The rows to begin with: any may be set, and setting uses no technique.
    Rows first() {
        return first;
    }

    /// Those that may be added to `total`, or taken from it; the shorter ones first.
    Rows on(int total, boolean minus) {
        @Nullable Rows[] known = minus ? taken : added;
        Rows rows = known[total];
        if (rows == null) {
            rows = find(total, minus);
            known[total] = rows;
        }
        return rows;
    }

    private Rows find(int total, boolean minus) {
        Rows rows = new Rows();
        for (int length = lengths.least(); length <= lengths.most(); length++) {
            steps.forEach(
                    total,
                    minus,
                    length,
                    (row, uses) -> rows.add(minus ? -row : row, uses & required));
        }
        return rows;
    }

    /// Rows with their sign, and the required techniques that each uses.
    static final class Rows {

        /// No rows at all.
        static final Rows NONE = new Rows();

        private short[] numbers = new short[32];
        private byte[] uses = new byte[32];
        private int size;

        private void add(long number, int used) {
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * size);
                uses = Arrays.copyOf(uses, 2 * size);
            }
            numbers[size] = (short) number;
            uses[size++] = (byte) used;
        }

        int size() {
            return size;
        }

        int number(int index) {
            return numbers[index];
        }

        /// As bits of [Tally#bits].
        int uses(int index) {
            return uses[index];
        }
    }
}
