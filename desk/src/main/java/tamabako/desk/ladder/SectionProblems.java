package tamabako.desk.ladder;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;

/// Makes the problems of one section of a grade, as its paper has them.
public final class SectionProblems {

    /// The name of the paper is printed nowhere.
    private static final PaperId UNPRINTED = PaperId.draw(() -> 0);

    private SectionProblems() {}

    /// A paper of that section alone.
    ///
    /// @param ladder the name of the ladder
    /// @param leftOut problems that it must not have
    public static PaperMade make(
            String ladder,
            Grade grade,
            Section section,
            long seed,
            Collection<? extends Problem> leftOut) {
        Grade only =
                new Grade(
                        grade.id(),
                        grade.name(),
                        List.of(section),
                        grade.time(),
                        grade.pass(),
                        grade.numbering(),
                        grade.writing(),
                        Optional.empty(),
                        grade.cites());
        return PaperMaker.of(ladder, only).make(UNPRINTED, seed, leftOut);
    }
}
