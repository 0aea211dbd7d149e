package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.Problem;
import tamabako.problems.grade.Format;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.draw.Draws;

/// Products, quotients or roots of a batch: sets that keep the customs of papers each, one for each
/// number of digits in all that the grade allows, mixed.
///
/// @param sets the sets in their order
record FactorBatch(List<FactorSet> sets) implements BatchMaker {

    /// Sets drawn with problems that were set already, before the maker is told to avoid them.
    private static final int TRIES = 2;

    static FactorBatch of(Format.Products format, int count, boolean isFirst) {
        return new FactorBatch(FactorSet.each(format, count, isFirst));
    }

    static FactorBatch of(Format.Quotients format, int count, boolean isFirst) {
        return new FactorBatch(FactorSet.each(format, count, isFirst));
    }

    static FactorBatch of(Format.Roots format, int count) {
        return new FactorBatch(FactorSet.each(format, count));
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

    /// Most sets hold nothing that was set already, and listing that for the maker takes longer
    /// than drawing again.
    private static Made make(FactorSet set, Draws draws, Sums taken) {
        for (int i = 0; i < TRIES; i++) {
            Made made = Maker.make(set.wish(), set.count(), draws.bits());
            boolean isNew =
                    !(made instanceof Made.Found(List<Problem> problems, _))
                            || problems.stream().noneMatch(taken::contains);
            if (isNew) {
                return made;
            }
        }
        return Maker.make(set.wish(), set.count(), draws.bits(), taken.asSet());
    }
}
