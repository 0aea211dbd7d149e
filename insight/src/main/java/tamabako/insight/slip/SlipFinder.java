package tamabako.insight.slip;

import java.math.BigDecimal;
import tamabako.problems.Problem;
import tamabako.problems.marking.Mark;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;

/// Finds the slips that may stand behind an answer.
///
/// Of a wrong answer a, the chance under a pupil's rates is `P0 * sum(rate * weight of each single
/// slip that leads to a) + eps * B(a)`: `P0` is the chance that nothing else slips, `eps` the share
/// of answers that no known slip stands behind, and `B` spreads those evenly over the answers of
/// the same length. Each slip's share is its part of that sum. Two slips at once are not looked
/// for.
public final class SlipFinder {

    private final Rates rates;

    /// A finder that weighs slips by `rates`.
    public SlipFinder(Rates rates) {
        this.rates = rates;
    }

    /// The rates that slips are weighed by.
    public Rates rates() {
        return rates;
    }

    /// What `written`, the answer as the pupil wrote it, tells. Its value counts, not its form.
    /// What is no number has no known slip, and neither has a right quotient with a wrong
    /// remainder.
    public Finding find(Problem problem, String written) {
        return find(EventTable.of(problem), written);
    }

    /// The same for a problem whose slips are listed already.
    public Finding find(EventTable table, String written) {
        return switch (Marker.mark(table.problem(), written, WritingRules.EASY)) {
            case Mark.Right _, Mark.WrongForm _ -> Finding.right(table.answer().toPlainString());
            case Mark.Wrong(BigDecimal read, _) -> wrong(table, read);
            case Mark.Empty _, Mark.Unclear _ -> wrong(table, table.answer());
        };
    }

    private Finding wrong(EventTable table, BigDecimal read) {
        Ranking ranking = new Ranking(table, read, rates);
        return new Finding(
                false, table.answer().toPlainString(), ranking.explained(), ranking.slips());
    }
}
