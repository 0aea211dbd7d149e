package tamabako.problems;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/// What a pupil wrote for a problem.
///
/// @param problem what was asked
/// @param answer the answer as written; blank for none
/// @param seconds how long it took, 0 or more
/// @param pupil the name the pupil goes by
/// @param at when it was written
/// @param subtotals running totals as written, in their order
public record Attempt(
        Problem problem,
        String answer,
        OptionalDouble seconds,
        Optional<String> pupil,
        Optional<OffsetDateTime> at,
        List<String> subtotals) {

    public Attempt {
        subtotals = List.copyOf(subtotals);
        if (seconds.isPresent() && !(seconds.getAsDouble() >= 0)) {
            throw new IllegalArgumentException(
                    "An attempt takes 0 seconds or more, not %s.".formatted(seconds.getAsDouble()));
        }
    }

    /// An answer of which no more is known.
    public static Attempt of(Problem problem, String answer) {
        return new Attempt(
                problem,
                answer,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }
}
