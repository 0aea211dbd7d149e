package tamabako.problems.setting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.problems.grade.Format;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Single numbers to be set or read: each length is equally likely, and each number of its length.
/// None comes again before all have come. They are no sums, so none is left out because a pupil has
/// had it.
///
/// @param count how many
record ReadingBatch(Format.Readings format, int count) implements BatchMaker {

    @Override
    public Pieces make(long seed, Sums taken) {
        Draws draws = new Draws(seed);
        List<Piece> pieces = new ArrayList<>();
        Set<Long> seen = new HashSet<>();
        while (pieces.size() < count) {
            if (seen.size() == there()) {
                seen.clear();
            }
            long number = draw(draws);
            if (seen.add(number)) {
                List<BigDecimal> rows = List.of(BigDecimal.valueOf(number));
                pieces.add(Piece.of(new Column("", rows, Terms.PLAIN), "reading"));
            }
        }
        return new Pieces.Found(pieces);
    }

    private long there() {
        return Powers.of(format.digits().most()) - Powers.of(format.digits().least() - 1);
    }

    private long draw(Draws draws) {
        int digits = (int) draws.between(format.digits().least(), format.digits().most());
        return draws.between(Powers.of(digits - 1), Powers.of(digits) - 1);
    }
}
