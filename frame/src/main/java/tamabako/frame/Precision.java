package tamabako.frame;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/// How far an answer is worked, and how it is read.
///
/// @param places decimal places of the answer, 0 to [#MOST_PLACES]
/// @param rounding what happens to the places beyond
public record Precision(int places, Rounding rounding) {

    /// The most decimal places that an answer is worked to.
    public static final int MOST_PLACES = 12;

    /// @throws Unworkable if there are too many places, or fewer than none
    public Precision {
        if (places < 0 || places > MOST_PLACES) {
            throw new Unworkable(new Unworkable.Reason.TooManyPlaces(places, MOST_PLACES));
        }
    }

    /// The rod of the last digit that is worked, the answer's unit rod being rod 0: one place more
    /// than asked for where it decides the rounding.
    public int lastRod() {
        return switch (rounding) {
            case HALF_UP -> -places - 1;
            case DOWN -> -places;
        };
    }

    /// The answer and what is left, from what is read on the frame as far as [#lastRod()].
    public Outcome outcome(BigDecimal read, BigDecimal left) {
        Optional<BigDecimal> remainder =
                switch (rounding) {
                    case HALF_UP -> Optional.empty();
                    case DOWN -> Optional.of(plain(left));
                };
        return new Outcome(round(read), remainder, OptionalInt.empty());
    }

    /// What is read on the frame, rounded to the places.
    public BigDecimal round(BigDecimal read) {
        return plain(read.setScale(places, rounding.mode()));
    }

    /// A number without zeros at its right end after the point.
    public static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
