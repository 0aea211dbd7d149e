package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;

/// One slip that may stand behind a wrong answer, at its likeliest place.
///
/// @param kind the kind of slip
/// @param share how likely this kind is, at whatever place, 0 to 1
/// @param hereShare how likely it is at this place, at most `share`
/// @param way how it came about, at this place
/// @param where the part of the sum
/// @param rod the rod, or the place of the digit, as a power of ten; empty where the slip is not on
///   one rod
/// @param digits the digits that the way of the slip tells of; see [Way]
/// @param difference by how much this slip changed the answer
public record Slip(
        SlipKind kind,
        double share,
        double hereShare,
        Way way,
        Where where,
        OptionalInt rod,
        List<Integer> digits,
        BigDecimal difference) {

    public Slip {
        digits = List.copyOf(digits);
        if (way.kind() != kind) {
            throw new IllegalArgumentException(way + " is no way of " + kind + ".");
        }
    }

    /// The row of a column that the slip was made in, the first being 1.
    public OptionalInt row() {
        return where instanceof Where.Row(int row) ? OptionalInt.of(row) : OptionalInt.empty();
    }
}
