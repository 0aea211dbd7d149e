package tamabako.insight.pooling;

import java.util.ArrayList;
import java.util.List;
import tamabako.insight.rule.RuleTally;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;

/// Gathers the answers of one pupil, one after another.
public final class PupilTally {

    private final List<Evidence> answers = new ArrayList<>();
    private final RuleTally rules = new RuleTally();
    private int notRead;

    /// Adds an answer.
    public void add(PupilAnswer answer) {
        answers.add(answer.evidence());
        answer.rules().ifPresent(rules::add);
    }

    /// Notes an answer that is none, or no number.
    public void addNotRead() {
        notRead++;
    }

    /// What the answers may show, one by one.
    public List<Evidence> answers() {
        return List.copyOf(answers);
    }

    /// What they show together, as pupils of `population` are.
    ///
    /// @param before the rates by which [PupilAnswer]s were made
    public PupilSlips told(Population population, Rates before) {
        Rates own = PupilRates.of(population, answers);
        return new PupilSlips(
                answers.size(),
                (int) answers.stream().filter(answer -> !answer.right()).count(),
                notRead,
                Evidence.sum(answers, own),
                own,
                population.rates(),
                new MainSlipFinder(population.rates()).find(answers),
                rules.rules(before, own));
    }
}
