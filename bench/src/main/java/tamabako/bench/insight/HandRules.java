package tamabako.bench.insight;

import java.util.List;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Column;
import tamabako.problems.Problem;

/// The rules of thumb that teachers have for a difference, as a baseline.
final class HandRules {

    private HandRules() {}

    /// The kind that the difference suggests: a row, twice a row, nine times a row, a one, a five,
    /// a multiple of nine.
    static SlipKind kind(Problem problem, long difference) {
        if (problem instanceof Column column) {
            List<Long> rows = column.rows().stream().map(row -> row.longValueExact()).toList();
            for (long row : rows) {
                if (difference == -row) {
                    return SlipKind.ROW_SKIPPED;
                }
                if (difference == row) {
                    return SlipKind.ROW_TWICE;
                }
                if (difference == -2 * row) {
                    return SlipKind.SIGN_MISSED;
                }
                if (difference == 9 * row || difference == row / 10 - row) {
                    return SlipKind.ROW_ON_NEIGHBOUR_ROD;
                }
            }
        }
        long figure = Math.abs(difference);
        while (figure % 10 == 0) {
            figure /= 10;
        }
        if (figure == 1) {
            return difference < 0 ? SlipKind.CARRY_LEFT_OUT : SlipKind.BORROW_LEFT_OUT;
        }
        if (figure == 5) {
            return SlipKind.FIVE_BEAD;
        }
        if (figure % 9 == 0) {
            return SlipKind.DIGITS_SWAPPED_READING;
        }
        return figure < 10 ? SlipKind.DIGIT_MISREAD : SlipKind.LINE_JUMP;
    }
}
