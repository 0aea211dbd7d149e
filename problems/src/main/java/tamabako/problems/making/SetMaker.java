package tamabako.problems.making;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.problems.Problem;
import tamabako.problems.making.draw.Draws;

/// Makes sets of products, quotients or roots.
///
/// A [Plan] of the set is drawn; then the problems, one after another, each drawn until it fits the
/// plan and is unlike those before it. A set that breaks a custom is thrown away whole and drawn
/// again, so that every set which keeps the customs comes as often as it would have come without
/// them: nothing steers a draw toward a custom, and so nothing bends it.
final class SetMaker {

    /// Sets that are thrown away before the maker gives up.
    static final int MOST_SETS = 20_000;

    /// Problems that are thrown away for one place of a set before the maker gives up.
    static final int MOST_TRIES = 1_000_000;

    private final Asking asking;
    private final Drawing drawing;
    private final Avoided avoided;
    private final Draws draws;
    private final Map<Custom, Integer> broken = new HashMap<>();

    private SetMaker(Asking asking, Drawing drawing, Avoided avoided, long seed) {
        this.asking = asking;
        this.drawing = drawing;
        this.avoided = avoided;
        this.draws = new Draws(seed);
    }

    static Made make(Asking asking, Drawing drawing, long seed, Avoided avoided) {
        Optional<BigInteger> there =
                drawing.there()
                        .map(all ->
                                all.subtract(BigInteger.valueOf(avoided.count(drawing::holds))));
        if (there.isPresent() && there.get().compareTo(BigInteger.valueOf(asking.count())) < 0) {
            return new Made.Impossible(
                    asking.wish(),
                    new Made.Reason.OnlySoMany(asking.count(), there.get().intValueExact()),
                    Optional.empty());
        }
        return new SetMaker(asking, drawing, avoided, seed).make(seed);
    }

    private Made make(long seed) {
        for (int tries = 1; tries <= MOST_SETS; tries++) {
            List<Problem> set = drawSet();
            if (set.size() < asking.count()) {
                return new Made.NotFound(
                        asking.wish(), new Made.Reason.NoMoreFound(set.size(), MOST_TRIES));
            }
            Optional<Custom> missed =
                    asking.customs().stream()
                            .filter(custom -> !Keeping.isKept(custom, set))
                            .findFirst();
            if (missed.isEmpty()) {
                return new Made.Found(set, seed);
            }
            broken.merge(missed.get(), 1, Integer::sum);
        }
        return new Made.NotFound(asking.wish(), new Made.Reason.CustomNotMet(hardest(), MOST_SETS));
    }

    /// The custom that broke most sets.
    private Custom hardest() {
        Custom hardest = asking.customs().getFirst();
        for (Custom custom : asking.customs()) {
            if (broken.getOrDefault(custom, 0) > broken.getOrDefault(hardest, 0)) {
                hardest = custom;
            }
        }
        return hardest;
    }

    /// A set to a plan, or as much of it as was found.
    private List<Problem> drawSet() {
        Plan plan = Plan.draw(draws, asking);
        Set<Problem> seen = new HashSet<>();
        List<Problem> set = new ArrayList<>(asking.count());
        while (set.size() < asking.count()) {
            Optional<Problem> problem = draw(plan, set.size(), seen);
            if (problem.isEmpty()) {
                return set;
            }
            seen.add(problem.get());
            set.add(problem.get().withId(Integer.toString(set.size() + 1)));
        }
        return set;
    }

    private Optional<Problem> draw(Plan plan, int place, Set<Problem> seen) {
        for (int i = 0; i < MOST_TRIES; i++) {
            Optional<Problem> problem =
                    drawing.draw(draws, plan.split(draws, place), plan.hasDecimals(place))
                            .filter(drawn -> fits(plan, place, drawn) && !seen.contains(drawn));
            if (problem.isPresent()) {
                return problem;
            }
        }
        return Optional.empty();
    }

    private boolean fits(Plan plan, int place, Problem problem) {
        return (asking.innerZeros().isEmpty() || plan.fits(place, Look.hasInnerZero(problem)))
                && asking.customs().stream().allMatch(custom -> Keeping.isKept(custom, problem))
                && !avoided.contains(problem);
    }
}
