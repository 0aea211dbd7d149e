package tamabako.problems.making.column;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.Column;
import tamabako.problems.words.Sayable;

/// Which rows of a column are taken (minus rows). The first never is.
///
/// Every pattern of signs that fits is equally likely.
///
/// @param leastMinus the fewest minus rows
/// @param mostMinus the most minus rows
/// @param lastPlus whether the last row is always added
/// @param longestRun how many minus rows may follow one another
public record Signs(int leastMinus, int mostMinus, boolean lastPlus, int longestRun)
        implements Sayable {

    /// Rows that are all added.
    public static final Signs PLUS = minus(0);

    /// Exactly so many minus rows, anywhere but first.
    public static Signs minus(int rows) {
        return minus(rows, rows);
    }

    /// `least` to `most` minus rows, anywhere but first.
    public static Signs minus(int least, int most) {
        return new Signs(least, most, false, Integer.MAX_VALUE);
    }

    /// The same with a last row that is always added.
    public Signs endingPlus() {
        return new Signs(leastMinus, mostMinus, true, longestRun);
    }

    /// The same with at most so many minus rows one after the other.
    public Signs inRunsOf(int longest) {
        return new Signs(leastMinus, mostMinus, lastPlus, longest);
    }

    @Override
    public String topic() {
        return "asked";
    }

    @Override
    public String template() {
        if (mostMinus == 0) {
            return "asked.no-minus-rows";
        }
        return "asked." + (leastMinus == mostMinus ? "exactly" : "between") + "-minus-rows";
    }

    /// What of `column` does not have these signs.
    public List<Missed> missedBy(Column column) {
        List<Missed> missed = new ArrayList<>();
        int minusRows = 0;
        int run = 0;
        int longest = 0;
        int last = column.rows().size();
        for (int row = 1; row <= last; row++) {
            boolean minus = column.rows().get(row - 1).signum() < 0;
            minusRows += minus ? 1 : 0;
            run = minus ? run + 1 : 0;
            longest = Math.max(longest, run);
            if (minus && (row == 1 || (row == last && lastPlus))) {
                missed.add(new Missed.TakenRow(row));
            }
        }
        if (minusRows < leastMinus || minusRows > mostMinus) {
            missed.add(new Missed.MinusRows(minusRows, leastMinus, mostMinus));
        }
        if (longest > longestRun) {
            missed.add(new Missed.MinusRun(longest, longestRun));
        }
        return missed;
    }
}
