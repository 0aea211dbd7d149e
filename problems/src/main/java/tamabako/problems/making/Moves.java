package tamabako.problems.making;

import java.util.Arrays;

/// Every row that may follow a running total: plus rows first, then minus rows with their sign, and
/// with each the required techniques that it uses.
///
/// For columns with rows of few digits.
final class Moves {

    private static final int FEW = 32;

    private int[] rows;
    private byte[] uses;
    private int size;
    private int firstMinus;

    private Moves(int length) {
        rows = new int[length];
        uses = new byte[length];
    }

    /// The first rows: any may be set, and setting uses no technique.
    static Moves first(Asked asked) {
        Moves moves = new Moves(FEW);
        for (long row = asked.leastRow(); row <= asked.mostRow(); row++) {
            moves.keep(row, 0);
        }
        moves.firstMinus = moves.size;
        return moves;
    }

    /// The rows that may follow `total`; `rods` are set to it.
    static Moves after(long total, Asked asked, Rods rods) {
        Moves moves = new Moves(FEW);
        rods.set(total);
        moves.collect(true, asked, rods);
        moves.firstMinus = moves.size;
        if (asked.wish().minusRows() > 0) {
            moves.collect(false, asked, rods);
        }
        return moves;
    }

    int size() {
        return size;
    }

    /// The index of the first minus row, or the size if there is none.
    int firstMinus() {
        return firstMinus;
    }

    int row(int index) {
        return rows[index];
    }

    /// The bits of the required techniques that the row at `index` uses.
    int uses(int index) {
        return uses[index];
    }

    private void collect(boolean adding, Asked asked, Rods rods) {
        int sign = adding ? 1 : -1;
        for (int length = asked.wish().leastDigits();
                length <= asked.wish().mostDigits();
                length++) {
            new LegalRows(rods, asked.allowed(), adding, length)
                    .forEach((row, used) -> keep(sign * row, used & asked.required()));
        }
    }

    private void keep(long row, int used) {
        if (size == rows.length) {
            rows = Arrays.copyOf(rows, 2 * size);
            uses = Arrays.copyOf(uses, 2 * size);
        }
        rows[size] = (int) row;
        uses[size++] = (byte) used;
    }
}
