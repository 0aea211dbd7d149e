package tamabako.insight.readiness;

import java.util.Optional;
import tamabako.problems.grade.Section;

/// One section of a paper, for one pupil.
///
/// @param section the section
/// @param field the sort of work that it is
/// @param proof what stands behind the figures
/// @param told the figures; empty where there is not enough behind them
public record SectionReadiness(Section section, Field field, Proof proof, Optional<Figures> told) {

    /// The figures of a section.
    ///
    /// @param enough the chance to reach in it what the paper asks for in each section; empty where
    ///   it asks for nothing but points in the whole
    /// @param points the points to be expected
    /// @param timeRunsOut the chance that the clock stops the pupil before its last problem is done
    public record Figures(Optional<Chance> enough, double points, double timeRunsOut) {}
}
