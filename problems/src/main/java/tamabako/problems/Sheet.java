package tamabako.problems;

import java.util.List;

/// Problems that are handed out together.
///
/// @param id an opaque name, printed on the sheet; it tells nothing about the answers
/// @param title what the teacher calls the sheet
/// @param problems the problems in their order
public record Sheet(String id, String title, List<Problem> problems) {

    public Sheet {
        problems = List.copyOf(problems);
    }
}
