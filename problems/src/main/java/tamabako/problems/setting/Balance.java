package tamabako.problems.setting;

import java.math.BigDecimal;
import java.util.List;
import tamabako.problems.Column;

/// How far the columns of a batch, in their order, are from what setters of papers keep to. Common
/// practice, no published source.
///
/// - The digits 0 to 9 come about equally often in the rows. A row never begins with 0, so 0 is
///   expected on the other places only.
/// - The answers begin with different digits. The sums of ten equally long rows crowd in the
///   middle, so a first digit may come twice, or in one answer of five; neighbours differ.
final class Balance {

    /// How far the count of a digit may be from what is expected: this share of it, or so many.
    private static final double FREE_SHARE = 0.15;

    private static final double FREE = 2;

    /// What a first digit that comes too often, or twice running, costs beside a digit too many.
    private static final double SAME_LEAD = 2;

    private static final int LEAD_ONE_OF = 5;

    private Balance() {}

    /// What is looked at in one column: its rows, how often each digit stands in them, and the
    /// first digit of its answer.
    static final class Look {

        private final int rows;
        private final int[] digits = new int[10];
        private final int lead;

        Look(Column column) {
            rows = column.rows().size();
            for (BigDecimal row : column.rows()) {
                long rest = Math.abs(row.unscaledValue().longValueExact());
                for (; rest > 0; rest /= 10) {
                    digits[(int) (rest % 10)]++;
                }
            }
            lead = lead(column.answer().value());
        }

        private static int lead(BigDecimal answer) {
            long rest = Math.abs(answer.unscaledValue().longValueExact());
            while (rest > 9) {
                rest /= 10;
            }
            return (int) rest;
        }
    }

    /// What the columns miss of the customs, in digits too many or too few; 0 where they keep them.
    static double missed(List<Look> columns) {
        int[] digits = new int[10];
        int[] leads = new int[10];
        int rows = 0;
        double missed = 0;
        int last = -1;
        for (Look column : columns) {
            rows += column.rows;
            for (int digit = 0; digit < 10; digit++) {
                digits[digit] += column.digits[digit];
            }
            leads[column.lead]++;
            missed += column.lead == last ? SAME_LEAD : 0;
            last = column.lead;
        }
        int most = Math.max(2, columns.size() / LEAD_ONE_OF);
        for (int lead : leads) {
            missed += SAME_LEAD * Math.max(0, lead - most);
        }
        return missed + unbalanced(digits, rows);
    }

    private static double unbalanced(int[] digits, int rows) {
        int all = 0;
        for (int count : digits) {
            all += count;
        }
        double zeros = Math.max(0, all - rows) / 10.0;
        double others = (all - zeros) / 9;
        double missed = off(digits[0], zeros);
        for (int digit = 1; digit < 10; digit++) {
            missed += off(digits[digit], others);
        }
        return missed;
    }

    private static double off(int count, double expected) {
        double free = Math.max(FREE, FREE_SHARE * expected);
        return Math.max(0, Math.abs(count - expected) - free);
    }
}
