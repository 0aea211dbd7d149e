package tamabako.insight.plan;

import java.util.OptionalInt;
import java.util.Set;
import tamabako.problems.Problem;

/// What is asked of a plan.
///
/// @param count how many problems, 1 or more
/// @param daysToExam how many days there are until the exam; empty where it is not known
/// @param avoided problems that are not to be asked again
/// @param seed the same seed makes the same plan of the same pupil
public record PlanWish(int count, OptionalInt daysToExam, Set<Problem> avoided, long seed) {

    /// The most problems of one plan.
    public static final int MOST = 200;

    public PlanWish {
        avoided = Set.copyOf(avoided);
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException(
                    "A plan has 1 to %d problems, not %d.".formatted(MOST, count));
        }
        if (daysToExam.isPresent() && daysToExam.getAsInt() < 0) {
            throw new IllegalArgumentException("An exam lies ahead, not behind.");
        }
    }
}
