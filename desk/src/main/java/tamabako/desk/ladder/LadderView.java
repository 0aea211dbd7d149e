package tamabako.desk.ladder;

import java.util.List;
import java.util.Optional;

/// What the page of a ladder shows.
///
/// @param id the name the ladder goes by
/// @param isOwn whether it is the teacher's own
public record LadderView(
        String id, String name, String about, boolean isOwn, List<GradeView> grades) {

    public LadderView {
        grades = List.copyOf(grades);
    }

    /// A grade.
    ///
    /// @param time for the whole paper; empty where sections have their own
    /// @param pass what has to be reached
    /// @param choice how many of the sections to choose are sat; empty where all are
    public record GradeView(
            String id,
            String name,
            String time,
            String pass,
            Optional<String> choice,
            List<SectionView> sections,
            List<SourceView> sources) {

        public GradeView {
            sections = List.copyOf(sections);
            sources = List.copyOf(sources);
        }

        /// Whether any of its figures is unconfirmed.
        public boolean hasUnconfirmed() {
            return sources.stream().anyMatch(source -> !source.confirmed());
        }
    }

    /// A section.
    ///
    /// @param batches a line for each batch
    /// @param time its own time; empty where the paper has one
    /// @param mode `mental` or `called`; empty for work on the frame
    public record SectionView(
            String id,
            String name,
            int count,
            int points,
            List<String> batches,
            String time,
            String mode) {

        public SectionView {
            batches = List.copyOf(batches);
        }
    }

    /// A source and what it is given for, in words.
    public record SourceView(String name, boolean confirmed, String figures) {}
}
