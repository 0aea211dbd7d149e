package tamabako.problems.making.column;

import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Draws signs, lengths and rows as they come, and gives up a column as soon as its total falls
/// below zero where it never may.
final class WholeColumns implements Source {

    private final SignPatterns signs;
    private final LengthPatterns lengths;
    private final boolean neverBelow;
    private final int[] digits;
    private final long[] numbers;

    /// Columns whose total falls below zero only where it may.
    WholeColumns(Asked asked) {
        this(asked, asked.neverBelow());
    }

    /// Columns with any total.
    static WholeColumns unbounded(Asked asked) {
        return new WholeColumns(asked, false);
    }

    private WholeColumns(Asked asked, boolean neverBelow) {
        this.signs = asked.patterns();
        this.lengths = asked.lengths();
        this.neverBelow = neverBelow;
        this.digits = new int[asked.shape().rows()];
        this.numbers = new long[digits.length];
    }

    @Override
    public boolean draw(Draws draws, Facts into) {
        signs.draw(draws, into);
        lengths.draw(draws, digits);
        long total = 0;
        for (int row = 0; row < digits.length; row++) {
            long least = Powers.of(digits[row] - 1);
            numbers[row] = least + draws.pick(9 * least);
            total += into.isMinus(row) ? -numbers[row] : numbers[row];
            if (neverBelow && total < 0) {
                return false;
            }
        }
        for (int row = 0; row < digits.length; row++) {
            into.put(row, Digits.pack(numbers[row]), into.isMinus(row));
        }
        return true;
    }

    @Override
    public boolean grants(Condition condition) {
        return neverBelow
                && condition.equals(new TotalCondition.BelowZero(TotalCondition.Dips.NEVER));
    }
}
