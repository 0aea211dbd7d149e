package tamabako.desk.book;

import java.util.List;
import tamabako.desk.sheet.Form;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// What the page of one group shows.
///
/// @param form its forms
/// @param pupils its pupils by name
public record GroupView(Group group, Form form, List<Line> pupils) {

    public GroupView {
        pupils = List.copyOf(pupils);
    }

    /// A pupil, and the day of the last thing written down, in words; blank for none.
    public record Line(Pupil pupil, String lastSeen) {}
}
