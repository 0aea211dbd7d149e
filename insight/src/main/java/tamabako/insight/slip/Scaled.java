package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Optional;

/// A number as a whole count of its last place.
///
/// @param units how many of them
/// @param places the decimal places, 0 or more
record Scaled(long units, int places) {

    /// `number` in units of `places` decimals; empty if it has more decimals, or more digits than
    /// the finder works with.
    static Optional<Scaled> of(BigDecimal number, int places) {
        if (Math.max(0, number.stripTrailingZeros().scale()) > places) {
            return Optional.empty();
        }
        BigDecimal counted = number.setScale(places);
        return counted.precision() > Tens.MOST_DIGITS
                ? Optional.empty()
                : Optional.of(new Scaled(counted.unscaledValue().longValueExact(), places));
    }

    /// `number` in units of its own last place.
    static Optional<Scaled> of(BigDecimal number) {
        return of(number, Math.max(0, number.scale()));
    }
}
