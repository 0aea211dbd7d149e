package tamabako.bench;

import java.math.BigDecimal;
import java.util.Arrays;

/// Holds the sides of a comparison to one result before they are measured.
final class Same {

    private Same() {}

    /// Stops the run if `results`, which may be numbers of different types, are not all equal.
    static void of(String what, Number... results) {
        long different =
                Arrays.stream(results)
                        .map(result -> new BigDecimal(result.toString()).stripTrailingZeros())
                        .distinct()
                        .count();
        if (different != 1) {
            throw new IllegalStateException(
                    "The sides do not agree on %s: %s.".formatted(what, Arrays.toString(results)));
        }
    }
}
