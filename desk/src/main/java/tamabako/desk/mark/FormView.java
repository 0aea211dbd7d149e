package tamabako.desk.mark;

import java.util.List;
import java.util.Optional;

/// The form for the answers to one sheet.
///
/// @param sheet the identity of the sheet
/// @param title the title of the sheet
/// @param problems every problem in one line
/// @param written the answers typed so far
/// @param pasted what stands in the box for pasting
/// @param strict whether commas are needed
/// @param below whether some right answers are below zero, so that a minus sign has to be typed
/// @param fault what cannot be taken, and how to mend it
public record FormView(
        String sheet,
        String title,
        List<String> problems,
        List<String> written,
        String pasted,
        boolean strict,
        boolean below,
        Optional<String> fault) {

    public FormView {
        problems = List.copyOf(problems);
        written = List.copyOf(written);
    }
}
