package tamabako.problems;

import java.math.BigDecimal;
import java.util.List;
import tamabako.problems.Unreadable.Reason;

/// Whether an attempt can have happened: its time and its running totals fit its problem.
///
/// Marking does not ask; what learns from answers should, for one impossible time spoils many good
/// ones.
public final class AttemptCheck {

    /// More digits a second than this are no hand's and no head's. Experts take four digits a
    /// second by ear and seven by eye (common practice, no published source).
    private static final int MOST_DIGITS_A_SECOND = 20;

    private AttemptCheck() {}

    /// `attempt`, if it can have happened.
    ///
    /// @throws Unreadable if it cannot, with the field and the reason
    public static Attempt checked(Attempt attempt) {
        int digits = digits(attempt.problem());
        double seconds = attempt.seconds().orElse(Double.POSITIVE_INFINITY);
        if (!attempt.answer().isBlank() && seconds * MOST_DIGITS_A_SECOND < digits) {
            String shown = BigDecimal.valueOf(seconds).stripTrailingZeros().toPlainString();
            throw new Unreadable("seconds", new Reason.TooFast(shown, digits));
        }
        int subtotals = attempt.subtotals().size();
        if (subtotals > 0) {
            if (!(attempt.problem() instanceof Column column)) {
                throw new Unreadable("subtotals", new Reason.NoSubtotals(attempt.problem().kind()));
            }
            if (subtotals > column.rows().size()) {
                throw new Unreadable(
                        "subtotals", new Reason.MoreSubtotals(subtotals, column.rows().size()));
            }
        }
        return attempt;
    }

    private static int digits(Problem problem) {
        return switch (problem) {
            case Column column -> digits(column.rows());
            case Product product -> digits(List.of(product.multiplicand(), product.multiplier()));
            case Quotient quotient -> digits(List.of(quotient.dividend(), quotient.divisor()));
            case Root root -> digits(List.of(root.of()));
        };
    }

    private static int digits(List<BigDecimal> numbers) {
        return numbers.stream().mapToInt(BigDecimal::precision).sum();
    }
}
