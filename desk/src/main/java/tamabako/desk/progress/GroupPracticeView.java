package tamabako.desk.progress;

import java.util.List;
import tamabako.desk.sheet.Form;
import tamabako.records.Group;

/// What the page of a group's next practice shows: a sheet of their own for each pupil.
///
/// @param form as it was filled in
/// @param seed that makes the same plans again
/// @param plans by pupil
/// @param made the sheets that were just made
public record GroupPracticeView(
        Group group, Form form, long seed, List<Plan> plans, List<MadeSheet> made) {

    public GroupPracticeView {
        plans = List.copyOf(plans);
        made = List.copyOf(made);
    }

    /// The plan of one pupil.
    ///
    /// @param grade the grade that it is for; blank where nothing is known of the pupil yet
    /// @param reasons why, in sentences
    public record Plan(String pupil, String name, String grade, List<String> reasons) {
        public Plan {
            reasons = List.copyOf(reasons);
        }
    }

    /// A sheet that was made for one pupil.
    public record MadeSheet(String sheet, String title) {}

    /// The numbers of the sheets just made, as an address has them.
    public String sheets() {
        return String.join(".", made.stream().map(MadeSheet::sheet).toList());
    }
}
