package tamabako.problems;

import java.math.BigDecimal;
import java.util.Optional;

/// A right answer.
///
/// @param value the answer, without trailing zeros after the point
/// @param remainder what is left of a dividend or radicand, where the answer is not rounded
public record Answer(BigDecimal value, Optional<BigDecimal> remainder) {

    public Answer {
        value = plain(value);
        remainder = remainder.map(Answer::plain);
    }

    /// An exact answer.
    public static Answer of(BigDecimal value) {
        return new Answer(value, Optional.empty());
    }

    /// The value in plain figures, such as `1224` or `-0.35`.
    public String figures() {
        return value.toPlainString();
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
