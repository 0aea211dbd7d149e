package tamabako.insight.pace;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;
import tamabako.insight.pooling.Manner;
import tamabako.problems.Attempt;
import tamabako.problems.AttemptCheck;
import tamabako.problems.Problem;
import tamabako.problems.Unreadable;

/// How long one answer took, and what it took it for.
///
/// @param parts the parts of the problem
/// @param seconds how long it took, above 0
/// @param day when it was written, in days since 1970; empty where that is not known
public record PaceAnswer(WorkParts parts, double seconds, OptionalLong day) {

    /// More strokes of the fingers a second than this are no hand's. An assumption on the safe
    /// side; no published record of strokes is known to us.
    public static final int MOST_STROKES_A_SECOND = 20;

    /// Whether a problem of these parts can be worked in so many seconds.
    public static boolean isPossible(Problem problem, WorkParts parts, double seconds) {
        boolean hand = Manner.of(problem) == Manner.FRAME;
        return seconds > 0 && !(hand && seconds * MOST_STROKES_A_SECOND < parts.strokes());
    }

    /// The time of an attempt; empty where none is given, or nothing was answered.
    ///
    /// @throws Unreadable if it is shorter than any hand or head needs
    /// @throws tamabako.frame.Unworkable if the problem does not fit the longest frame
    public static Optional<PaceAnswer> of(Attempt attempt) {
        AttemptCheck.checked(attempt);
        if (attempt.seconds().isEmpty() || attempt.answer().isBlank()) {
            return Optional.empty();
        }
        double seconds = attempt.seconds().getAsDouble();
        WorkParts parts = WorkParts.of(attempt.problem());
        if (!isPossible(attempt.problem(), parts, seconds)) {
            String shown = BigDecimal.valueOf(seconds).stripTrailingZeros().toPlainString();
            throw new Unreadable(
                    "seconds", new Unreadable.Reason.TooFastForHand(shown, parts.strokes()));
        }
        OptionalLong day =
                attempt.at()
                        .map(at -> OptionalLong.of(at.toLocalDate().toEpochDay()))
                        .orElse(OptionalLong.empty());
        return Optional.of(new PaceAnswer(parts, seconds, day));
    }
}
