package tamabako.insight.estimate;

import java.util.List;

/// How hard problems are.
///
/// @param effects how much each feature adds, in logits; harder is higher
/// @param problems what the features of each problem come to, in logits
/// @param logLikelihood natural logarithm
public record Difficulties(List<Estimate> effects, List<Estimate> problems, double logLikelihood) {

    public Difficulties {
        effects = List.copyOf(effects);
        problems = List.copyOf(problems);
    }

    static Difficulties of(Peak peak, Features features) {
        return new Difficulties(peak.estimates(), peak.sums(features.rows()), peak.height());
    }

    /// The difficulties alone.
    public List<Double> values() {
        return problems.stream().map(Estimate::value).toList();
    }
}
