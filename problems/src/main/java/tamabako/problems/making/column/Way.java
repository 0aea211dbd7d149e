package tamabako.problems.making.column;

import java.util.List;
import tamabako.problems.words.Sayable;

/// How the columns that are asked for can be drawn.
public sealed interface Way {

    /// They come from `drawing`.
    record Drawn(Drawing drawing) implements Way {}

    /// There is no such column, as is proved: `clash` are the fewest wishes that do not go
    /// together.
    record Nothing(List<Sayable> clash) implements Way {
        public Nothing {
            clash = List.copyOf(clash);
        }
    }

    /// None was found in so many tries.
    record GaveUp(int tries) implements Way {}
}
