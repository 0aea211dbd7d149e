package tamabako.frame;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/// What a working comes to, read off the frame.
///
/// @param answer the answer; for a rounded one, after rounding
/// @param remainder what is left of a dividend or radicand where the answer is not rounded
/// @param loan the rod above the frame's number that a negative total is still lent from: the
///   answer is then read by complements from `10^loan`
public record Outcome(BigDecimal answer, Optional<BigDecimal> remainder, OptionalInt loan) {

    /// An answer with nothing left and no loan.
    public static Outcome of(BigDecimal answer) {
        return new Outcome(answer, Optional.empty(), OptionalInt.empty());
    }
}
