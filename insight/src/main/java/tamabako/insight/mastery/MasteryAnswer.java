package tamabako.insight.mastery;

import java.util.Optional;
import java.util.OptionalLong;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.StrandEvidence;
import tamabako.problems.Attempt;

/// What one answer adds to what is known of a pupil's mastery.
///
/// @param kind the kind of problem, as [tamabako.problems.Problem#kind()] has it
/// @param evidence what it says about the pupil's slips
/// @param day when it was written, in days since 1970; empty where that is not known
public record MasteryAnswer(String kind, StrandEvidence evidence, OptionalLong day) {

    /// Of an attempt at the problem of `table`, weighed by the rates that ship; empty if the answer
    /// is no number.
    public static Optional<MasteryAnswer> of(EventTable table, Attempt attempt) {
        return of(table, attempt, Manner.of(attempt.problem()).shipped());
    }

    /// The same, weighed by other rates: those of `usual` pupils. They must be the same for all
    /// answers that are told of together.
    public static Optional<MasteryAnswer> of(EventTable table, Attempt attempt, Rates usual) {
        OptionalLong day =
                attempt.at()
                        .map(at -> OptionalLong.of(at.toLocalDate().toEpochDay()))
                        .orElse(OptionalLong.empty());
        return StrandEvidence.of(table, attempt, usual)
                .map(evidence -> new MasteryAnswer(table.problem().kind(), evidence, day));
    }
}
