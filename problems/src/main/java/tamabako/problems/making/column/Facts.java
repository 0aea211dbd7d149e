package tamabako.problems.making.column;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import tamabako.frame.Technique;
import tamabako.frame.walk.ColumnWalk;
import tamabako.frame.walk.PackedNumber;
import tamabako.problems.Column;

/// A column as conditions look at it: its rows packed for the fast walk, and what the walk counted
/// of them. It is filled anew for each column.
final class Facts {

    final long[] rows;
    private final int places;
    private final ColumnWalk walk;
    private int dips;
    private int firstBelowZero;

    /// Room for columns of so many rows with so many decimals.
    Facts(int rows, int places) {
        this.rows = new long[rows];
        this.places = places;
        this.walk = ColumnWalk.measuringRuns(places);
    }

    static Facts of(Column column) {
        List<BigDecimal> numbers = column.rows();
        int places = numbers.stream().mapToInt(BigDecimal::scale).max().orElse(0);
        Facts facts = new Facts(numbers.size(), Math.max(places, 0));
        for (int i = 0; i < numbers.size(); i++) {
            facts.rows[i] = PackedNumber.pack(numbers.get(i), facts.places);
        }
        facts.walk.walk(facts.rows, facts.rows.length);
        facts.addUp();
        return facts;
    }

    private void addUp() {
        long total = 0;
        dips = 0;
        firstBelowZero = 0;
        for (int i = 0; i < rows.length; i++) {
            long before = total;
            total += PackedNumber.unpack(rows[i]);
            if (before >= 0 && total < 0) {
                firstBelowZero = dips == 0 ? i + 1 : firstBelowZero;
                dips++;
            }
        }
    }

    int places() {
        return places;
    }

    /// How many steps after the first row are done by `technique`.
    int count(Technique technique) {
        int all = walk.tally().count(technique);
        return technique == Technique.DIRECT ? all - walk.settingSteps() : all;
    }

    int strokes() {
        return walk.tally().strokes();
    }

    int longestRun() {
        return walk.tally().longestRun();
    }

    long total() {
        return walk.total();
    }

    /// How often the total goes from zero or above to below zero.
    int dips() {
        return dips;
    }

    /// The row, counted from 1, after which the total is first below zero; 0 if it never is.
    int firstBelowZero() {
        return firstBelowZero;
    }

    /// How often each digit stands in the rows.
    int[] digits() {
        int[] counts = new int[10];
        for (long row : rows) {
            for (int place = PackedNumber.digits(row) - 1; place >= 0; place--) {
                counts[PackedNumber.digit(row, place)]++;
            }
        }
        return counts;
    }

    /// The number of a row, as it is written.
    BigDecimal number(int row) {
        return BigDecimal.valueOf(PackedNumber.unpack(rows[row]), places);
    }

    @Override
    public String toString() {
        return Arrays.toString(rows);
    }
}
