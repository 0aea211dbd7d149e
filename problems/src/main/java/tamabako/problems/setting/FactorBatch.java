package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.Problem;
import tamabako.problems.grade.Format;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.Wish;
import tamabako.problems.making.draw.Draws;

/// Products, quotients or roots of a batch: sets, one for each number of digits in all that the
/// grade allows, mixed; each keeps the customs of papers by itself, if they are to be kept.
///
/// @param sets the sets in their order
record FactorBatch(List<FactorSet> sets) implements BatchMaker {

    /// Sets drawn before one that misses a custom has to do, and before one that lacks what the
    /// grade asks.
    private static final int TRIES = 5;

    private static final int TRIES_FOR_GRADE = 100;

    static FactorBatch of(
            Format.Products format, int count, boolean isFirst, SettersCustoms customs) {
        return new FactorBatch(FactorSet.each(format, count, isFirst, customs));
    }

    static FactorBatch of(
            Format.Quotients format, int count, boolean isFirst, SettersCustoms customs) {
        return new FactorBatch(FactorSet.each(format, count, isFirst, customs));
    }

    static FactorBatch of(Format.Roots format, int count, SettersCustoms customs) {
        return new FactorBatch(FactorSet.each(format, count, customs));
    }

    @Override
    public Pieces make(long seed, Sums taken) {
        Draws draws = new Draws(seed);
        List<Piece> pieces = new ArrayList<>();
        for (FactorSet set : sets) {
            switch (make(set, draws, taken)) {
                case Made.Found(List<Problem> problems, _) ->
                        problems.forEach(problem -> {
                            taken.add(problem);
                            pieces.add(Piece.of(problem, FactorSort.of(problem)));
                        });
                case Made.Impossible(_, Made.Reason why, _) -> {
                    return new Pieces.None(new Lack.NoSuch(why));
                }
                case Made.NotFound(_, Made.Reason why) -> {
                    return new Pieces.None(new Lack.NoSuch(why));
                }
            }
        }
        return new Pieces.Found(sets.size() == 1 ? pieces : Shuffled.of(pieces, draws));
    }

    private static Made make(FactorSet set, Draws draws, Sums taken) {
        Made best = drawn(set.wish(), set.count(), draws, taken);
        Made next = best;
        double fewest = Double.POSITIVE_INFINITY;
        for (int i = 0; next instanceof Made.Found(List<Problem> problems, long seed); i++) {
            FactorChoice choice =
                    new FactorChoice(problems, spare(set, draws, taken, problems), set.customs());
            List<Problem> chosen = choice.best(draws);
            if (choice.missed() < fewest) {
                fewest = choice.missed();
                best = new Made.Found(chosen, seed);
            }
            int tries = fewest >= FactorChoice.LACKING ? TRIES_FOR_GRADE : TRIES;
            if (fewest == 0 || i >= tries - 1) {
                return best;
            }
            next = drawn(set.wish(), set.count(), draws, taken);
        }
        return best;
    }

    /// Other problems to choose from; none where there are too few.
    private static List<Problem> spare(
            FactorSet set, Draws draws, Sums taken, List<Problem> problems) {
        if (new FactorChoice(problems, List.of(), set.customs()).missed() == 0) {
            return List.of();
        }
        int count = FactorSet.SPARES * set.count();
        Sums seen = taken.copy();
        problems.forEach(seen::add);
        return Maker.make(set.spare(), count, draws.bits()) instanceof Made.Found(var found, _)
                ? found.stream().filter(seen::add).toList()
                : List.of();
    }

    /// Most sets hold nothing that was set already, and listing that for the maker takes longer
    /// than drawing again.
    private static Made drawn(Wish wish, int count, Draws draws, Sums taken) {
        Made made = Maker.make(wish, count, draws.bits());
        return made instanceof Made.Found(List<Problem> problems, _)
                        && problems.stream().anyMatch(taken::contains)
                ? Maker.make(wish, count, draws.bits(), taken.asSet())
                : made;
    }
}
