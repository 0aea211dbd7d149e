package tamabako.desk.mark;

import java.util.List;

/// The sheets to choose from for marking.
///
/// @param unknown the number of a sheet that was asked for and is not in the book; blank for none
/// @param sheets the last sheets, the newest first
public record ChooseView(String unknown, List<Entry> sheets) {

    public ChooseView {
        sheets = List.copyOf(sheets);
    }

    /// One sheet, with the day it was kept in words of the reader.
    public record Entry(String id, String title, int problems, String day, boolean demo) {}
}
