package tamabako.problems.pad;

import java.util.List;
import java.util.Optional;
import tamabako.problems.Pad;
import tamabako.problems.Problem;
import tamabako.problems.making.Made;

/// What came of a wish for a pad.
public sealed interface PadMade {

    /// The pad and its problems, named by their numbers from 1; the same wish, count and seed make
    /// them again.
    record Found(Pad pad, List<Problem> problems, long seed) implements PadMade {
        public Found {
            problems = List.copyOf(problems);
        }
    }

    /// No such pad has so many problems; this is proved.
    ///
    /// @param nearest a wish close by that can be granted, where one is known
    record Impossible(PadWish wish, Made.Reason reason, Optional<PadWish> nearest)
            implements PadMade {}
}
