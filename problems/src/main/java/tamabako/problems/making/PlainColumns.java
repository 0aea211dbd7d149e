package tamabako.problems.making;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import tamabako.frame.Technique;

/// Columns (mitorizan).
///
/// No row is zero, and none begins with a zero. The first row is set on the frame and asks for no
/// technique; every step of the others, carries and borrows included, is done by an allowed one.
///
/// @param rows how many rows, the first included
/// @param leastDigits the fewest digits of a row, decimals included
/// @param mostDigits the most digits of a row, decimals included
/// @param minusRows how many rows are taken; never the first
/// @param places how many of the digits stand behind the point
/// @param allowed the techniques that steps may be done by
/// @param required the techniques that must each occur in every column
/// @param mayGoBelowZero whether a running total may fall below zero
record PlainColumns(
        int rows,
        int leastDigits,
        int mostDigits,
        int minusRows,
        int places,
        Set<Technique> allowed,
        Set<Technique> required,
        boolean mayGoBelowZero) {

    public PlainColumns {
        allowed = Collections.unmodifiableSet(new TreeSet<>(allowed));
        required = Collections.unmodifiableSet(new TreeSet<>(required));
    }

    static PlainColumns of(ColumnWish wish) {
        return new PlainColumns(
                wish.rows(),
                wish.shape().lengths().least(),
                wish.shape().lengths().most(),
                wish.signs().leastMinus(),
                wish.shape().places(),
                wish.allowed(),
                wish.required(),
                wish.mayGoBelowZero());
    }

    /// Columns of `rows` rows of `digits` digits each that are added by any technique.
    public static PlainColumns of(int rows, int digits) {
        return new PlainColumns(
                rows,
                digits,
                digits,
                0,
                0,
                EnumSet.allOf(Technique.class),
                EnumSet.noneOf(Technique.class),
                false);
    }

    public PlainColumns withRows(int changed) {
        return new PlainColumns(
                changed,
                leastDigits,
                mostDigits,
                minusRows,
                places,
                allowed,
                required,
                mayGoBelowZero);
    }

    public PlainColumns withDigits(int least, int most) {
        return new PlainColumns(
                rows, least, most, minusRows, places, allowed, required, mayGoBelowZero);
    }

    public PlainColumns withMinusRows(int changed) {
        return new PlainColumns(
                rows, leastDigits, mostDigits, changed, places, allowed, required, mayGoBelowZero);
    }

    public PlainColumns withPlaces(int changed) {
        return new PlainColumns(
                rows,
                leastDigits,
                mostDigits,
                minusRows,
                changed,
                allowed,
                required,
                mayGoBelowZero);
    }

    public PlainColumns allowing(Technique... changed) {
        return allowing(Set.copyOf(Arrays.asList(changed)));
    }

    public PlainColumns allowing(Set<Technique> changed) {
        return new PlainColumns(
                rows,
                leastDigits,
                mostDigits,
                minusRows,
                places,
                changed,
                required,
                mayGoBelowZero);
    }

    public PlainColumns requiring(Technique... changed) {
        return requiring(Set.copyOf(Arrays.asList(changed)));
    }

    public PlainColumns requiring(Set<Technique> changed) {
        return new PlainColumns(
                rows, leastDigits, mostDigits, minusRows, places, allowed, changed, mayGoBelowZero);
    }

    public PlainColumns goingBelowZero(boolean changed) {
        return new PlainColumns(
                rows, leastDigits, mostDigits, minusRows, places, allowed, required, changed);
    }
}
