package tamabako.insight.rule;

import java.util.ArrayList;
import java.util.List;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;

/// Sums up what a pupil's answers say about wrong rules, one after another.
///
/// Three pupils in ten are taken to have no rule, and the others each rule as likely as any other.
/// Pupils without one slip as pupils do or, as likely, in a manner of their own.
public final class RuleTally {

    private final double[][] logs = new double[LastingRule.known().size()][Following.values()];
    private final boolean[] met = new boolean[logs.length];
    private final List<Evidence> answers = new ArrayList<>();

    /// Adds an answer.
    public void add(RuleEvidence evidence) {
        answers.add(evidence.answer());
        for (int rule = 0; rule < logs.length; rule++) {
            met[rule] |= evidence.met(rule);
            for (int i = 0; i < logs[rule].length; i++) {
                logs[rule][i] += evidence.log(rule, i);
            }
        }
    }

    /// Which rules the answers so far show.
    ///
    /// @param usual how often pupils in general slip
    /// @param own how often this one does
    public LastingRules rules(Rates usual, Rates own) {
        double byUsual = 0;
        double byOwn = 0;
        for (Evidence answer : answers) {
            byUsual += Math.log(answer.chance(usual));
            byOwn += Math.log(answer.chance(own));
        }
        double most = Math.max(byUsual, byOwn);
        double both = Math.exp(byUsual - most) + Math.exp(byOwn - most);
        return LastingRules.of(logs, met, most + Math.log(both / 2));
    }
}
