package tamabako.problems.setting;

import java.util.List;

/// What the features of one form should sum to, and how far off a sum may be.
///
/// @param totals the sum to reach, for each feature
/// @param tolerances the deviation that is no longer felt, above 0, for each feature; deviations
///   are weighed in this measure, so a small tolerance makes a feature count for more
public record FormGoal(List<Double> totals, List<Double> tolerances) {

    public FormGoal {
        totals = List.copyOf(totals);
        tolerances = List.copyOf(tolerances);
        if (totals.size() != tolerances.size()
                || tolerances.stream().anyMatch(tolerance -> !(tolerance > 0))) {
            throw new IllegalArgumentException(
                    "Each total has a tolerance above 0: %s, %s.".formatted(totals, tolerances));
        }
    }

    /// How many features are watched.
    public int size() {
        return totals.size();
    }
}
