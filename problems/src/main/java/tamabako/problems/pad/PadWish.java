package tamabako.problems.pad;

import java.util.Optional;
import tamabako.problems.Terms;
import tamabako.problems.making.Digits;

/// What a teacher asks of a pad and its problems.
///
/// Bodies have problems of 8 leaves (15 of them), of 10 (10 of them), and formerly of 15 (30 of
/// them); five lines a leaf with all. Source: 珠算 見取算・読上算・伝票算, ja.wikibooks, for the lines;
/// kappakanjikanthari.com/soroban-denpyozan for the leaves.
///
/// @param lines amounts of a leaf, 1 to 20
/// @param leaves leaves of the pad, at least as many as a problem adds, at most 200
/// @param span leaves that a problem adds, 2 to 100
/// @param digits digits of an amount, within 1 to 12
/// @param unit the currency of the amounts as an ISO 4217 code, if they are amounts
public record PadWish(int lines, int leaves, int span, Digits digits, Optional<String> unit) {

    /// The lines of a leaf that all bodies have.
    public static final int USUAL_LINES = 5;

    /// Problems of `span` leaves from a pad of five lines and three times as many leaves, plain
    /// numbers.
    public static PadWish of(int span, Digits digits) {
        return new PadWish(USUAL_LINES, 3 * span, span, digits, Optional.empty());
    }

    public PadWish withLines(int changed) {
        return new PadWish(changed, leaves, span, digits, unit);
    }

    public PadWish withLeaves(int changed) {
        return new PadWish(lines, changed, span, digits, unit);
    }

    public PadWish withUnit(String changed) {
        return new PadWish(lines, leaves, span, digits, Optional.of(changed));
    }

    Terms terms() {
        return unit.map(Terms.PLAIN::withUnit).orElse(Terms.PLAIN);
    }

    /// How many different problems a pad has: each line from each leaf that leaves enough.
    int problems() {
        return lines * (leaves - span + 1);
    }
}
