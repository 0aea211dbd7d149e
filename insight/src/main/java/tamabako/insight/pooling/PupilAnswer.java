package tamabako.insight.pooling;

import java.util.Optional;
import tamabako.insight.rule.RuleEvidence;
import tamabako.insight.slip.ColumnAnswer;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipFinder;

/// What one answer adds to what is known of a pupil.
///
/// @param evidence which kinds of slip it may show
/// @param rules what it says about wrong rules; empty but for columns on the frame whose total is
///   never below zero
public record PupilAnswer(Evidence evidence, Optional<RuleEvidence> rules) {

    /// Of the answer `written` to the problem of `table`; empty if it is no number.
    public static Optional<PupilAnswer> of(EventTable table, String written, Rates usual) {
        return SlipFinder.evidence(table, written)
                .map(evidence ->
                        new PupilAnswer(
                                evidence,
                                ColumnAnswer.of(table, written)
                                        .map(column -> RuleEvidence.of(column, usual))));
    }
}
