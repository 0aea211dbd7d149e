package tamabako.problems.story;

import java.util.List;
import tamabako.problems.Problem;
import tamabako.problems.making.Made;

/// What came of asking for stories.
public sealed interface StoryMade {

    /// The problems, no two alike, named by their numbers from 1; the same grade, count and seed
    /// make them again.
    record Found(List<Problem> problems, long seed) implements StoryMade {
        public Found {
            problems = List.copyOf(problems);
        }
    }

    /// There are no stories of that grade, or not so many may be asked for at once.
    record Impossible(Made.Reason reason) implements StoryMade {}

    /// The search gave up: there may be more, and none were found.
    record NotFound(Made.Reason reason) implements StoryMade {}
}
