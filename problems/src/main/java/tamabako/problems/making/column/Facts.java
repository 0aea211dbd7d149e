package tamabako.problems.making.column;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import tamabako.frame.Technique;
import tamabako.frame.Unworkable;
import tamabako.frame.walk.ColumnWalk;
import tamabako.problems.Column;

/// A column as conditions look at it, in rows that can be changed one by one. What is asked of it
/// is found when it is first asked for after a change.
///
/// Each row is held three ways: its digits packed (see [Digits]), its sign as a mask, and its
/// number.
final class Facts {

    private final int places;
    private final long[] sizes;
    private final long[] sides;
    private final long[] numbers;
    private final long[] packed;
    private final int[] digits = new int[10];
    private final ColumnWalk walk;
    private final Totals totals = new Totals();
    private boolean counted;
    private boolean numbered;
    private boolean walked;
    private boolean added;
    private boolean unworkable;

    /// Rows to be put, with so many decimals.
    Facts(int rows, int places) {
        this(rows, places, new ColumnWalk(places));
    }

    private Facts(int rows, int places, ColumnWalk walk) {
        this.places = places;
        this.sizes = new long[rows];
        this.sides = new long[rows];
        this.numbers = new long[rows];
        this.packed = new long[rows];
        this.walk = walk;
    }

    /// Rows to be put, of which it can be asked how far carries run on.
    static Facts measuringRuns(int rows, int places) {
        return new Facts(rows, places, ColumnWalk.measuringRuns(places));
    }

    static Facts of(Column column) {
        List<BigDecimal> rows = column.rows();
        int places = Math.max(0, rows.stream().mapToInt(BigDecimal::scale).max().orElse(0));
        Facts facts = measuringRuns(rows.size(), places);
        for (int i = 0; i < rows.size(); i++) {
            facts.setNumber(i, rows.get(i).scaleByPowerOfTen(places).longValueExact());
        }
        return facts;
    }

    int rows() {
        return sizes.length;
    }

    int places() {
        return places;
    }

    /// The digits of a row, packed.
    long size(int row) {
        return sizes[row];
    }

    boolean isMinus(int row) {
        return sides[row] < 0;
    }

    /// A row with its sign, in units of the last decimal place.
    long number(int row) {
        long number = numbers()[row];
        return sides[row] < 0 ? -number : number;
    }

    /// Whether a row has the digits of an earlier one.
    boolean isLikeEarlier(int row) {
        for (int earlier = 0; earlier < row; earlier++) {
            if (sizes[earlier] == sizes[row]) {
                return true;
            }
        }
        return false;
    }

    /// How often `digit` stands in the rows.
    int digits(int digit) {
        if (!counted) {
            Arrays.fill(digits, 0);
            for (long size : sizes) {
                countDigits(size, 1);
            }
            counted = true;
        }
        return digits[digit];
    }

    void setNumber(int row, long number) {
        setSize(row, Digits.pack(Math.abs(number)));
        setMinus(row, number < 0);
    }

    /// Puts a row of a new column.
    void put(int row, long size, boolean minus) {
        sizes[row] = size;
        sides[row] = minus ? Long.MIN_VALUE : 0;
        counted = false;
        numbered = false;
        forget();
    }

    /// Puts other digits in a row; its sign stays.
    void setSize(int row, long size) {
        if (counted) {
            countDigits(sizes[row], -1);
            countDigits(size, 1);
        }
        replaceSize(row, size);
    }

    /// Puts other digits in a row where it is known that together with other such changes each
    /// digit comes as often as before.
    void replaceSize(int row, long size) {
        sizes[row] = size;
        numbers[row] = Digits.number(size);
        forget();
    }

    void setMinus(int row, boolean minus) {
        sides[row] = minus ? Long.MIN_VALUE : 0;
        forget();
    }

    /// Takes over the rows of another column with as many.
    void copy(Facts other) {
        for (int row = 0; row < sizes.length; row++) {
            put(row, other.sizes[row], other.isMinus(row));
        }
    }

    private void countDigits(long size, int by) {
        int left = Digits.length(size);
        for (long rest = size; left > 0; left--) {
            digits[Digits.digit(rest, 0)] += by;
            rest >>>= 4;
        }
    }

    private long[] numbers() {
        if (!numbered) {
            for (int row = 0; row < sizes.length; row++) {
                numbers[row] = Digits.number(sizes[row]);
            }
            numbered = true;
        }
        return numbers;
    }

    private void forget() {
        walked = false;
        added = false;
    }

    /// How many steps after the first row are done by `technique`.
    int count(Technique technique) {
        int all = walk().tally().count(technique);
        return technique == Technique.DIRECT ? all - walk.settingSteps() : all;
    }

    int strokes() {
        return walk().tally().strokes();
    }

    /// Over how many rods the longest carry or borrow runs on.
    int longestRun() {
        return walk().tally().longestRun();
    }

    /// Whether a frame of sixteen rods is too short for it.
    boolean isUnworkable() {
        walk();
        return unworkable;
    }

    Totals totals() {
        if (!added) {
            totals.add(numbers(), sides);
            added = true;
        }
        return totals;
    }

    private ColumnWalk walk() {
        if (!walked) {
            for (int row = 0; row < sizes.length; row++) {
                packed[row] = sizes[row] | sides[row];
            }
            unworkable = false;
            try {
                walk.walk(packed, packed.length);
            } catch (Unworkable _) {
                unworkable = true;
            }
            walked = true;
        }
        return walk;
    }

    /// The digits of a row as they are written.
    BigDecimal written(int row) {
        return BigDecimal.valueOf(numbers()[row], places);
    }
}
