package tamabako.problems.setting;

import java.util.List;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.setting.Seats.Place;

/// Shares candidates out into forms whose features sum to the same goal, as near as can be.
///
/// Finding the very best split takes too long for any method; swapping two candidates of one class,
/// between forms or with one that is left over, comes very near soon. While the search is warm,
/// swaps that make the split worse are taken as well (simulated annealing); a swap that breaks the
/// rule of a form never is.
public final class FormSplit {

    /// By how many tolerances a swap may worsen a split with a chance of one in e, at the start and
    /// at the end of each of the rounds that a search has.
    private static final double WARM = 3;

    private static final double COLD = 0.1;

    /// Swaps tried in a round for every seat, and at least.
    private static final int A_SEAT = 400;

    private static final int LEAST = 10_000;

    private final List<Candidate> pool;
    private final FormRule rule;
    private final FormSums sums;

    /// @param goal what each form should sum to
    /// @param rule what each form must keep
    public FormSplit(List<Candidate> pool, FormGoal goal, FormRule rule) {
        this.pool = List.copyOf(pool);
        this.rule = rule;
        this.sums = new FormSums(this.pool, goal);
    }

    /// What came of a search.
    ///
    /// @param forms for each form the numbers of its candidates in the pool, seat by seat
    /// @param worst the largest deviation of any form and feature, in tolerances: 1 or less where
    ///   all are met
    public record Split(List<List<Integer>> forms, double worst) {
        public Split {
            forms = forms.stream().map(List::copyOf).toList();
        }
    }

    /// Swaps until every tolerance is met, or `swaps` have been tried; gives the best split met
    /// with. The same start and seed give the same split on every machine.
    ///
    /// @param start a first split, every form of which keeps its rule
    public Split from(List<List<Integer>> start, long seed, int swaps) {
        Seats seats = new Seats(pool, copy(start));
        sums.begin(copy(start));
        Draws draws = new Draws(seed);
        Split best = new Split(start, sums.worst());
        double warmth = WARM;
        int round = Math.max(LEAST, A_SEAT * seats.seated());
        double cooling = StrictMath.pow(COLD / WARM, 1.0 / round);
        for (int i = 0; i < swaps && best.worst() > 1; i++) {
            warmth = i % round == 0 ? WARM : warmth * cooling;
            if (step(seats, warmth, draws) && sums.worst() < best.worst()) {
                best = new Split(seats.forms(), sums.worst());
            }
        }
        return best;
    }

    /// Draws a swap and does it, unless it costs too much or breaks a rule; whether it was done.
    private boolean step(Seats seats, double warmth, Draws draws) {
        Place one = seats.drawSeated(draws);
        Place other = seats.drawOther(one, draws);
        if (one.form() == other.form()) {
            return false;
        }
        int out = seats.at(one);
        int in = seats.at(other);
        double growth = sums.growth(one.form(), other.form(), out, in);
        if (growth > 0 && draws.part() >= StrictMath.exp(-growth / warmth)) {
            return false;
        }
        seats.swap(one, other);
        if (!seats.keeps(rule, one) || !seats.keeps(rule, other)) {
            seats.swap(one, other);
            return false;
        }
        sums.swap(one.form(), other.form(), out, in);
        return true;
    }

    private static int[][] copy(List<List<Integer>> forms) {
        return forms.stream()
                .map(form -> form.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}
