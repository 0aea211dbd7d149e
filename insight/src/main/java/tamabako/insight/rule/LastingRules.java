package tamabako.insight.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// Which wrong rules a pupil's answers show.
///
/// @param none the chance that there is none, 0 to 1
/// @param likeliest the rules from the likeliest on, at most [#MOST]
public record LastingRules(double none, List<Candidate> likeliest) {

    /// The most rules that are listed.
    public static final int MOST = 3;

    /// The chance from which a rule is told as found.
    public static final double FOUND = 0.9;

    /// The chance of no rule before anything is known.
    private static final double NO_RULE = 0.3;

    public LastingRules {
        likeliest = List.copyOf(likeliest);
    }

    /// A rule that the pupil may have.
    ///
    /// @param rule the rule
    /// @param chance how likely it is that the pupil has it, 0 to 1
    /// @param followed how often it seems to be followed where it applies, 0 to 1
    public record Candidate(LastingRule rule, double chance, double followed) {}

    /// Whether the first rule may be told as found.
    public boolean found() {
        return !likeliest.isEmpty() && likeliest.getFirst().chance() >= FOUND;
    }

    /// @param logs for each rule and each value of how often it is followed, the natural logarithm
    ///   of the chance of all answers
    /// @param met which rules could have been followed at all
    /// @param logNone the same without a rule
    static LastingRules of(double[][] logs, boolean[] met, double logNone) {
        List<LastingRule> rules = LastingRule.known();
        double most = logNone;
        for (double[] values : logs) {
            for (double log : values) {
                most = Math.max(most, log);
            }
        }
        double none = NO_RULE * Math.exp(logNone - most);
        double each = (1 - NO_RULE) / rules.size() / Following.values();
        double all = none;
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            double chance = 0;
            double followed = 0;
            for (int value = 0; value < Following.values(); value++) {
                double one = each * Math.exp(logs[i][value] - most);
                chance += one;
                followed += one * Following.value(value);
            }
            all += chance;
            if (met[i]) {
                candidates.add(new Candidate(rules.get(i), chance, followed / chance));
            }
        }
        double sum = all;
        return new LastingRules(
                none / sum,
                candidates.stream()
                        .map(one -> new Candidate(one.rule(), one.chance() / sum, one.followed()))
                        .sorted(Comparator.comparingDouble(Candidate::chance).reversed())
                        .limit(MOST)
                        .toList());
    }
}
