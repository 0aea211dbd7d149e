package tamabako.desk.progress;

import java.util.List;
import java.util.Optional;
import tamabako.records.Group;

/// What the page of a group's progress shows.
///
/// @param ladder the name of the ladder that the grades are of
/// @param pupils by name
/// @param slips the commonest slips of the group
/// @param held how well forecasts held
public record GroupProgressView(
        Group group, String ladder, List<Line> pupils, List<CommonSlip> slips, HeldPart held) {

    public GroupProgressView {
        pupils = List.copyOf(pupils);
        slips = List.copyOf(slips);
    }

    /// A pupil.
    ///
    /// @param state how the pupil stands: `ready`, `near`, `on-the-way`, `stuck` or `unknown`
    /// @param right how many of the answers are right, in hundredths
    /// @param grade the next grade, or blank
    /// @param band the chance to pass it
    /// @param more how many problems are needed before a chance is told; 0 where one is
    /// @param mainSlip the slip that stands out, or blank
    /// @param weak the moves that are not mastered yet, by name
    public record Line(
            String id,
            String name,
            String state,
            int answers,
            long right,
            String grade,
            Optional<ReadinessPart.Band> band,
            int more,
            String mainSlip,
            List<String> weak) {
        public Line {
            weak = List.copyOf(weak);
        }
    }

    /// A slip that several pupils make.
    ///
    /// @param about how many were made, as far as the answers show
    /// @param pupils who make it
    /// @param width of its bar, in hundredths of the commonest
    public record CommonSlip(String name, String about, List<String> pupils, long width) {
        public CommonSlip {
            pupils = List.copyOf(pupils);
        }
    }
}
