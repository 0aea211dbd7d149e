package tamabako.problems.making;

import java.util.Optional;
import tamabako.problems.making.draw.Draws;

/// A way to draw columns.
interface Source {

    /// The rows of a column that grants the wish, minus rows with a minus sign; or empty where this
    /// try came to nothing.
    Optional<long[]> draw(Draws draws);
}
