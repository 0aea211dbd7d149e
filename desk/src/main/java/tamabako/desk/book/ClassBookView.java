package tamabako.desk.book;

import java.util.List;
import tamabako.desk.sheet.Form;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// What the page of the class book shows.
///
/// @param form the forms of the page
/// @param groups every group with its pupils
/// @param months after how many months without anything new a pupil is listed
/// @param due the pupils who are listed
public record ClassBookView(Form form, List<GroupCard> groups, int months, List<Due> due) {

    public ClassBookView {
        groups = List.copyOf(groups);
        due = List.copyOf(due);
    }

    /// A group and its pupils by name.
    public record GroupCard(Group group, List<Pupil> pupils) {
        public GroupCard {
            pupils = List.copyOf(pupils);
        }
    }

    /// A pupil who has not been seen for long, with the day in words; blank where it is not known.
    public record Due(Pupil pupil, String lastSeen) {}

    /// Whether a group of the demo class is among them.
    public boolean demo() {
        return groups.stream().anyMatch(card -> card.group().demo());
    }
}
