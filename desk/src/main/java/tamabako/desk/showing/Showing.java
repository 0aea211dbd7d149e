package tamabako.desk.showing;

/// One showing as it is asked for.
///
/// @param digits of each number, 1 to 10
/// @param rows how many numbers, 2 to 30
/// @param minus how many of them are taken
/// @param pace how fast they come
/// @param look as what they are shown
/// @param anySize as large as the screen allows, which only a slow pace may be
/// @param place where it is looked at
public record Showing(
        int digits, int rows, int minus, Pace pace, Look look, boolean anySize, Place place) {

    static final int MOST_DIGITS = 10;
    static final int LEAST_ROWS = 2;
    static final int MOST_ROWS = 30;

    Showing at(Pace changed) {
        return new Showing(digits, rows, minus, changed, look, anySize, place);
    }
}
