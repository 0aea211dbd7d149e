package tamabako.insight.slip;

/// When in a column a slip is made: after which digit of which row, packed into one `int` so that
/// what comes later is greater.
///
/// A slip with a whole row is made when its last digit is.
final class Moment {

    private static final int PLACES = 32;

    private Moment() {}

    /// The moment after the digit at `place`, counted from 0 at the right, of a packed part of the
    /// sum as in [Code].
    static int after(int where, int place) {
        return where * PLACES + PLACES - 1 - place;
    }

    /// The packed part of the sum.
    static int where(int moment) {
        return moment / PLACES;
    }

    /// The place of the digit.
    static int place(int moment) {
        return PLACES - 1 - moment % PLACES;
    }
}
