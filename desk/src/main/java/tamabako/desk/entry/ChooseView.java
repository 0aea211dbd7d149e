package tamabako.desk.entry;

import java.util.List;
import tamabako.records.Group;

/// What the page shows on which the sheet and the group are chosen.
///
/// @param number the number that was typed; blank for none
/// @param isUnknown whether nothing goes by that number
/// @param sheets the last sheets, the newest first
/// @param groups all groups
public record ChooseView(String number, boolean isUnknown, List<Entry> sheets, List<Group> groups) {

    public ChooseView {
        sheets = List.copyOf(sheets);
        groups = List.copyOf(groups);
    }

    /// One sheet, with the day it was kept in words of the reader.
    public record Entry(String id, String title, int problems, String day, boolean demo) {}
}
