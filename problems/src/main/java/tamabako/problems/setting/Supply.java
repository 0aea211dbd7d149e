package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import tamabako.problems.Problem;
import tamabako.problems.making.Made;
import tamabako.problems.making.ReadyMaker;
import tamabako.problems.making.draw.Draws;

/// New problems to the wish of a maker, as many as are needed and some to choose from.
///
/// @param finish what is done to each problem that is made; empty where it is of no use
record Supply(ReadyMaker maker, Function<Problem, Optional<Problem>> finish) {

    /// Rounds of making before it is said that there are no more.
    private static final int ROUNDS = 40;

    /// What came of a supply.
    sealed interface Supplied {

        /// At least as many as needed.
        record Enough(List<Problem> problems) implements Supplied {}

        record Lacking(Lack lack) implements Supplied {}
    }

    /// `wished` problems that are not in `seen`, or fewer, but no fewer than `needed`; those given
    /// are added to `seen`.
    Supplied draw(int needed, int wished, Draws draws, Sums seen) {
        List<Problem> problems = new ArrayList<>();
        int ask = wished;
        for (int round = 0; round < ROUNDS && problems.size() < needed && ask > 0; round++) {
            Made made = maker.make(ask, draws.bits(), Set.of());
            if (made instanceof Made.Found(List<Problem> found, _)) {
                found.stream()
                        .flatMap(problem -> finish.apply(problem).stream())
                        .filter(seen::add)
                        .forEach(problems::add);
                continue;
            }
            int there = there(made);
            if (there <= 0 || there >= ask) {
                return new Supplied.Lacking(new Lack.NoSuch(why(made)));
            }
            ask = there;
        }
        return problems.size() < needed
                ? new Supplied.Lacking(new Lack.TooFewNew(problems.size(), needed))
                : new Supplied.Enough(problems.subList(0, Math.min(wished, problems.size())));
    }

    /// How many problems there are where the maker had too few; 0 where it does not say.
    private static int there(Made made) {
        return switch (made) {
            case Made.Impossible(_, Made.Reason.OnlySoMany(_, int there), _) -> there;
            case Made.NotFound(_, Made.Reason.NoMoreFound(int found, _)) -> found;
            case Made.Found _, Made.Impossible _, Made.NotFound _ -> 0;
        };
    }

    private static Made.Reason why(Made made) {
        return switch (made) {
            case Made.Impossible(_, Made.Reason why, _) -> why;
            case Made.NotFound(_, Made.Reason why) -> why;
            case Made.Found _ -> throw new IllegalArgumentException("These were found: " + made);
        };
    }
}
