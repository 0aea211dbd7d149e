package tamabako.problems.effort;

import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Trace;
import tamabako.frame.Working;
import tamabako.problems.Problem;

/// Counts problems by their traces: roots, and whatever is too long for a faster way.
final class TraceCount {

    private TraceCount() {}

    static HandCount of(Problem problem) {
        Working working = problem.work(Setup.COMMON);
        HandCount count = new HandCount();
        count(working.setting(), count);
        count(working.trace(), count);
        return count;
    }

    private static void count(Trace trace, HandCount count) {
        for (int i = 0; i < trace.steps().size(); i++) {
            Step step = trace.steps().get(i);
            count.step(step.technique(), step.before().value(), step.after().value());
            boolean same =
                    i > 0 && trace.steps().get(i - 1).cause().entry().equals(step.cause().entry());
            if (!same) {
                note(step.cause().entry(), count);
            }
        }
    }

    /// What is recalled or tried for an entry, besides the moves of the hand.
    private static void note(Cause entry, HandCount count) {
        switch (entry) {
            case Cause.PartialProduct _,
                    Cause.ProductTaken _,
                    Cause.RootProductTaken _,
                    Cause.SquareTaken _,
                    Cause.HalfSquareTaken _,
                    Cause.CubeTaken _,
                    Cause.TripleSet _,
                    Cause.AddedBack _ ->
                    count.product();
            case Cause.TrialDigit _, Cause.RootDigit _ -> count.trial();
            case Cause.RevisedDown _, Cause.RevisedUp _ -> count.revision();
            case Cause.Setting _,
                    Cause.Row _,
                    Cause.Carry _,
                    Cause.Borrow _,
                    Cause.Loan _,
                    Cause.LoanReturned _,
                    Cause.MultiplicandCleared _,
                    Cause.Halved _,
                    Cause.Doubled _,
                    Cause.QuotientCleared _ -> {}
        }
    }
}
