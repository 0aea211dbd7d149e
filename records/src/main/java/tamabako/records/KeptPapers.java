package tamabako.records;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.LadderFile;
import tamabako.problems.setting.Paper;

/// Forms of one grade that were made together.
///
/// @param id a short name, of the desk only; each paper has its own printed one
/// @param yaml the file of their ladder as it was when they were made
/// @param madeAt when they were made
/// @param papers the forms in their order, one at least, all of one ladder and grade
public record KeptPapers(String id, String yaml, Instant madeAt, List<Paper> papers) {

    public KeptPapers {
        papers = List.copyOf(papers);
        if (papers.isEmpty()) {
            throw new IllegalArgumentException("Papers are kept one at least.");
        }
    }

    /// The ladder as it was then; empty where its file can no longer be read.
    public Optional<Ladder> ladder() {
        String name = papers.getFirst().ladder();
        return LadderFile.read(name, yaml) instanceof LadderFile.Read(Ladder ladder)
                ? Optional.of(ladder)
                : Optional.empty();
    }

    /// What a list says of them.
    ///
    /// @param ladder the name the ladder goes by
    /// @param grade the name the grade goes by within its ladder
    /// @param forms how many there are
    public record Entry(String id, String ladder, String grade, int forms, Instant madeAt) {}
}
