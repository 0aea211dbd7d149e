package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import tamabako.problems.Problem;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.Wish;
import tamabako.problems.making.draw.Draws;

/// New problems to a wish, as many as are needed and some to choose from.
///
/// @param fits what each problem must be besides
record Supply(Wish wish, Predicate<Problem> fits) {

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
        for (int round = 0; round < ROUNDS && problems.size() < needed; round++) {
            switch (Maker.make(wish, ask, draws.bits())) {
                case Made.Found(List<Problem> found, _) ->
                        found.stream().filter(fits).filter(seen::add).forEach(problems::add);
                case Made.Impossible(_, Made.Reason.OnlySoMany(_, int there), _) when there < ask ->
                        ask = there;
                case Made.NotFound(_, Made.Reason.NoMoreFound(int found, _)) when found < ask ->
                        ask = found;
                case Made.Impossible(_, Made.Reason why, _) -> {
                    return new Supplied.Lacking(new Lack.NoSuch(why));
                }
                case Made.NotFound(_, Made.Reason why) -> {
                    return new Supplied.Lacking(new Lack.NoSuch(why));
                }
            }
            if (ask == 0) {
                break;
            }
        }
        return problems.size() < needed
                ? new Supplied.Lacking(new Lack.TooFewNew(problems.size(), needed))
                : new Supplied.Enough(problems.subList(0, Math.min(wished, problems.size())));
    }
}
