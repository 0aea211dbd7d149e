package tamabako.problems.making;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Terms;

/// Makes columns.
final class ColumnMaker {

    private static final int TRIES = 100_000;

    private final ColumnWish wish;

    ColumnMaker(ColumnWish wish) {
        this.wish = wish;
    }

    Made make(int count, long seed) {
        Draws draws = new Draws(seed);
        Source source = new WholeColumns(Asked.of(wish, false));
        Set<List<BigDecimal>> seen = new HashSet<>();
        List<Problem> problems = new ArrayList<>();
        for (int tries = 0; problems.size() < count; tries++) {
            if (tries > TRIES) {
                return new Made.NotFound(wish, new Made.Reason.NoneFound(TRIES));
            }
            Optional<long[]> drawn = source.draw(draws);
            if (drawn.isEmpty()) {
                continue;
            }
            List<BigDecimal> rows = new ArrayList<>();
            for (long row : drawn.get()) {
                rows.add(BigDecimal.valueOf(row, wish.places()));
            }
            if (seen.add(rows)) {
                tries = 0;
                problems.add(new Column(Integer.toString(problems.size() + 1), rows, Terms.PLAIN));
            }
        }
        return new Made.Found(problems, seed);
    }
}
