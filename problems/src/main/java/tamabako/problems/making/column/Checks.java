package tamabako.problems.making.column;

import java.util.Comparator;
import java.util.List;

/// All conditions of a wish, to be looked at many times: those that cost least first.
final class Checks {

    private final Measure[] measures;

    Checks(List<Condition> conditions) {
        measures =
                conditions.stream()
                        .sorted(Comparator.comparingInt(Checks::cost))
                        .map(Measure::of)
                        .toArray(Measure[]::new);
    }

    private static int cost(Condition condition) {
        return switch (condition) {
            case DigitCondition.RowsDiffer _ -> 3;
            case DigitCondition _ -> 0;
            case HandCondition _ -> 1;
            case TotalCondition _ -> 2;
        };
    }

    boolean areMet(Facts facts) {
        for (Measure measure : measures) {
            if (measure.of(facts) != 0) {
                return false;
            }
        }
        return true;
    }

    /// How far the column is from meeting them all.
    int far(Facts facts) {
        int far = 0;
        for (Measure measure : measures) {
            far += measure.of(facts);
        }
        return far;
    }
}
