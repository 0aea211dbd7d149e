package tamabako.desk.work;

import java.util.List;
import java.util.Locale;
import tamabako.frame.Frame;
import tamabako.frame.Habits;
import tamabako.frame.Trace;
import tamabako.frame.Working;
import tamabako.problems.Answer;
import tamabako.problems.Problem;

/// A problem and how it is worked.
///
/// @param problem the problem, under the terms that it was worked under
/// @param habits the habits of the hand that worked it
/// @param working every step, from the cleared frame to the answer
public record Worked(Problem problem, Habits habits, Working working) {

    /// The frame when the operands are set.
    public Frame start() {
        return working.trace().start();
    }

    /// Where the unit rod is.
    public UnitRod unit() {
        return UnitRod.of(start());
    }

    /// The answer as it is read off the frame.
    public Answer answer() {
        return new Answer(working.outcome().answer(), working.outcome().remainder());
    }

    /// The word for the kind of frame: `modern`, `older` or `suanpan`.
    public String frameWord() {
        return start().kind().name().toLowerCase(Locale.ROOT);
    }

    /// The digits of the frame after each step of `trace`, the start first.
    static List<String> states(Trace trace) {
        return trace.states().stream().map(Frame::digits).toList();
    }
}
