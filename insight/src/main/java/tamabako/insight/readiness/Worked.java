package tamabako.insight.readiness;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import tamabako.insight.pace.PaceAnswer;
import tamabako.insight.pace.WorkParts;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Attempt;
import tamabako.problems.marking.Mark;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;

/// What one answer says about how often and how fast a pupil works.
///
/// @param field the sort of work
/// @param slips how many slips pupils in general are expected to make in the problem, above 0
/// @param right whether the answer was right
/// @param pace the natural logarithm of how many times as long it took as it takes pupils in
///   general; empty where the time is not known
/// @param day the day it was worked, counted from 1970; empty where it is not known
/// @param parts what each part of the work takes pupils in general; empty where the time is not
///   known, or is one that no hand can have
public record Worked(
        Field field,
        double slips,
        boolean right,
        OptionalDouble pace,
        OptionalLong day,
        Optional<WorkParts> parts) {

    /// An answer of which the parts of the work are not known.
    public Worked(Field field, double slips, boolean right, OptionalDouble pace, OptionalLong day) {
        this(field, slips, right, pace, day, Optional.empty());
    }

    /// Of an attempt; empty if nothing was written, for then nothing is known.
    ///
    /// @throws tamabako.frame.Unworkable if the problem does not fit the longest frame
    public static Optional<Worked> of(Attempt attempt, EventTables tables) {
        Task task = Task.of(attempt.problem(), tables);
        return right(attempt)
                .map(right ->
                        new Worked(
                                Field.of(attempt.problem()),
                                task.slips(),
                                right,
                                pace(attempt, task),
                                day(attempt.at()),
                                parts(attempt, task)));
    }

    private static Optional<Boolean> right(Attempt attempt) {
        return switch (Marker.mark(attempt.problem(), attempt.answer(), WritingRules.EASY)) {
            case Mark.Right _, Mark.WrongForm _ -> Optional.of(true);
            case Mark.Wrong _, Mark.Unclear _ -> Optional.of(false);
            case Mark.Empty _ -> Optional.empty();
        };
    }

    private static OptionalDouble pace(Attempt attempt, Task task) {
        double seconds = attempt.seconds().orElse(0);
        return seconds > 0
                ? OptionalDouble.of(Math.log(seconds / task.seconds()))
                : OptionalDouble.empty();
    }

    private static Optional<WorkParts> parts(Attempt attempt, Task task) {
        double seconds = attempt.seconds().orElse(0);
        return task.parts()
                .filter(parts -> PaceAnswer.isPossible(attempt.problem(), parts, seconds));
    }

    /// The same answer held against a time of which the logarithm is `longer` more.
    Worked against(double longer) {
        return new Worked(
                field,
                slips,
                right,
                pace.isPresent() ? OptionalDouble.of(pace.getAsDouble() - longer) : pace,
                day,
                parts);
    }

    private static OptionalLong day(Optional<OffsetDateTime> at) {
        return at.isPresent()
                ? OptionalLong.of(at.get().toLocalDate().toEpochDay())
                : OptionalLong.empty();
    }
}
