package tamabako.problems.setting;

import java.util.List;
import java.util.Optional;
import tamabako.problems.Pad;
import tamabako.problems.Problem;
import tamabako.problems.grade.Section;

/// A section of a paper with its problems.
///
/// @param section what the grade says of it
/// @param problems in their order, each named by its printed number and with the terms of the
///   section: unit, places, rounding, points and mode
/// @param pad the slip pad that the problems are told by, where the section has one; only for such
///   a section
public record PaperSection(Section section, List<Problem> problems, Optional<Pad> pad) {

    public PaperSection {
        problems = List.copyOf(problems);
    }
}
