package tamabako.desk.home;

import java.util.List;
import java.util.Optional;

/// What the first page shows.
///
/// @param groups every group with its pupils
/// @param sheets the last sheets, the newest first
/// @param work the last marked work, the newest first
public record HomeView(List<GroupCard> groups, List<SheetEntry> sheets, List<WorkEntry> work) {

    public HomeView {
        groups = List.copyOf(groups);
        sheets = List.copyOf(sheets);
        work = List.copyOf(work);
    }

    /// A pupil to be looked up.
    public record PupilEntry(String id, String name) {}

    /// A group and its pupils by name.
    public record GroupCard(String id, String name, boolean demo, List<PupilEntry> pupils) {
        public GroupCard {
            pupils = List.copyOf(pupils);
        }
    }

    /// A sheet, with the day it was kept in words of the reader.
    public record SheetEntry(String id, String title, int problems, String day, boolean demo) {}

    /// Marked work; `pupil` is empty where the teacher did not say whose it is.
    public record WorkEntry(
            String id,
            Optional<String> pupil,
            String title,
            long right,
            int problems,
            String day) {}

    /// Whether anything of the demo class is shown.
    public boolean demo() {
        return groups.stream().anyMatch(GroupCard::demo)
                || sheets.stream().anyMatch(SheetEntry::demo);
    }
}
