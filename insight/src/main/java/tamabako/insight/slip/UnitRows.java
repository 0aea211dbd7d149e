package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Column;

/// The rows of a column as whole counts of the last place that any of them has.
///
/// @param rows the rows, which together, none with a minus, are no longer than the finder works
///   with
/// @param places how many decimal places they have
@SuppressWarnings("ArrayRecordComponent") // kept within the package, compared by nobody
record UnitRows(long[] rows, int places) {

    /// The rows of `column`; empty if there are too many, or they are too long.
    static Optional<UnitRows> of(Column column) {
        List<BigDecimal> decimals = column.rows();
        int places = places(column);
        long[] rows = new long[decimals.size()];
        long most = 0;
        for (int i = 0; i < rows.length; i++) {
            if (isTooLong(decimals.get(i), places)) {
                return Optional.empty();
            }
            rows[i] = units(decimals.get(i), places);
            most += Math.abs(rows[i]);
            if (most >= Tens.power(Tens.MOST_DIGITS)) {
                return Optional.empty();
            }
        }
        return rows.length > Code.MOST_ROWS
                ? Optional.empty()
                : Optional.of(new UnitRows(rows, places));
    }

    /// How many decimal places the rows of `column` have.
    static int places(Column column) {
        int places = 0;
        for (BigDecimal row : column.rows()) {
            places = Math.max(places, row.scale());
        }
        return places;
    }

    private static boolean isTooLong(BigDecimal number, int places) {
        return number.precision() - number.scale() + places > Tens.MOST_DIGITS;
    }

    private static long units(BigDecimal number, int places) {
        int scale = number.scale();
        return scale >= 0
                ? number.scaleByPowerOfTen(scale).longValueExact() * Tens.power(places - scale)
                : number.setScale(places).unscaledValue().longValueExact();
    }

    /// The sum of the rows.
    long total() {
        long total = 0;
        for (long row : rows) {
            total += row;
        }
        return total;
    }

    /// How many wrong answers misreading one digit of one row leads to. On each place a row's digit
    /// makes every change from minus itself to what it lacks to nine, or the reverse where it is
    /// taken.
    int answersOfMisreading() {
        int[] least = new int[Tens.MOST_DIGITS];
        int[] most = new int[Tens.MOST_DIGITS];
        for (long row : rows) {
            long high = Math.abs(row);
            int place = 0;
            do {
                int digit = (int) (high % 10);
                least[place] = Math.min(least[place], row < 0 ? digit - 9 : -digit);
                most[place] = Math.max(most[place], row < 0 ? digit : 9 - digit);
                high /= 10;
                place++;
            } while (high > 0);
        }
        return Arrays.stream(most).sum() - Arrays.stream(least).sum();
    }

    /// Whether no total on the way is below zero.
    boolean staysAboveZero() {
        long total = 0;
        for (long row : rows) {
            total += row;
            if (total < 0) {
                return false;
            }
        }
        return true;
    }
}
