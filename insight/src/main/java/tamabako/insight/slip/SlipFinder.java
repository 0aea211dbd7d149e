package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.List;
import tamabako.frame.Figures;
import tamabako.frame.Unworkable;
import tamabako.problems.Problem;

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

    /// What `written`, the answer as the pupil wrote it, tells. What is no number at all has no
    /// known slip.
    public Finding find(Problem problem, String written) {
        return find(EventTable.of(problem), written);
    }

    /// The same for a problem whose slips are listed already.
    public Finding find(EventTable table, String written) {
        String expected = table.answer().toPlainString();
        BigDecimal value;
        try {
            value = Figures.parse(written);
        } catch (Unworkable _) {
            return new Finding(false, expected, 0, List.of(Ranking.noneKnown(BigDecimal.ZERO)));
        }
        if (value.compareTo(table.answer()) == 0) {
            return Finding.right(expected);
        }
        Ranking ranking = new Ranking(table, value, rates);
        return new Finding(false, expected, ranking.explained(), ranking.slips());
    }
}
