package tamabako.insight.readiness;

import java.util.Optional;
import tamabako.insight.pace.WorkParts;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.EventTables;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Problem;
import tamabako.problems.Story;
import tamabako.problems.effort.Effort;

/// What a problem takes pupils in general.
///
/// @param slips how many slips they are expected to make in it, above 0
/// @param seconds how long they take, above 0
/// @param parts what of that each part of the work takes; empty where it is not known
public record Task(double slips, double seconds, Optional<WorkParts> parts) {

    /// The least that is reckoned with.
    private static final double LEAST = 1e-6;

    public Task {
        if (!(slips > 0 && slips < Double.POSITIVE_INFINITY)
                || !(seconds > 0 && seconds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "No problem has %s slips in %s s.".formatted(slips, seconds));
        }
    }

    /// A task of which the parts of the work are not known.
    public Task(double slips, double seconds) {
        this(slips, seconds, Optional.empty());
    }

    /// What `problem` takes: its occasions for each kind of slip times the rates of pupils in
    /// general, and its strokes times theirs. The earlier sums of a story count as well.
    ///
    /// @throws tamabako.frame.Unworkable if it does not fit the longest frame
    public static Task of(Problem problem, EventTables tables) {
        double slips = slips(problem, tables);
        if (problem.terms().told().orElse(null) instanceof Story story) {
            for (Problem earlier : story.earlier()) {
                slips += slips(earlier, tables);
            }
        }
        return new Task(
                Math.max(LEAST, slips),
                Math.max(LEAST, Effort.of(problem).seconds()),
                Optional.of(WorkParts.of(problem)));
    }

    private static double slips(Problem problem, EventTables tables) {
        return slips(tables.of(problem), Manner.of(problem).shipped());
    }

    /// The slips that pupils with these rates are expected to make in the problem of `table`.
    public static double slips(EventTable table, Rates rates) {
        double sum = 0;
        for (SlipKind kind : SlipKind.values()) {
            sum += kind == SlipKind.NONE_KNOWN ? 0 : table.occasions(kind) * rates.of(kind);
        }
        return sum;
    }
}
