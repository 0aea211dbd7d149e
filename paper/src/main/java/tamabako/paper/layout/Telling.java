package tamabako.paper.layout;

import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Story;

/// How the numbers of a problem reach the pupil's eye.
enum Telling {
    /// As a sum on the sheet.
    SUM,
    /// On the leaves of a slip pad.
    PAD,
    /// In a story.
    STORY;

    static Telling of(Problem problem) {
        return problem.terms()
                .told()
                .map(told ->
                        switch (told) {
                            case PadLine _ -> PAD;
                            case Story _ -> STORY;
                        })
                .orElse(SUM);
    }
}
