package tamabako.insight.slip;

import tamabako.problems.Problem;

/// Finds the slips that may stand behind an answer.
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

    /// What `written`, the answer as the pupil wrote it, tells.
    public Finding find(Problem problem, String written) {
        throw new UnsupportedOperationException(problem.id() + written);
    }
}
