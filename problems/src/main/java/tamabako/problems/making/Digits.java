package tamabako.problems.making;

import java.util.stream.IntStream;

/// How many digits a number may have. Zeros at its front or end do not count: 0.045 has two.
///
/// @param least the fewest
/// @param most the most
public record Digits(int least, int most) {

    /// So many, no more and no fewer.
    public static Digits of(int digits) {
        return new Digits(digits, digits);
    }

    /// Whether a number may have so many.
    public boolean holds(int digits) {
        return digits >= least && digits <= most;
    }

    /// Every number of digits it may have.
    public IntStream all() {
        return IntStream.rangeClosed(least, most);
    }

    /// The nearest range that lies within `least` to `most`.
    public Digits within(int lowest, int highest) {
        int first = Math.clamp(least, lowest, highest);
        return new Digits(first, Math.clamp(most, first, highest));
    }

    /// As people write it: 4, or 4-6.
    @Override
    public String toString() {
        return least == most ? Integer.toString(least) : least + "-" + most;
    }
}
