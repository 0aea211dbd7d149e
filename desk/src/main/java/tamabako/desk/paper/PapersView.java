package tamabako.desk.paper;

import java.util.List;
import java.util.Optional;
import tamabako.desk.sheet.Form;

/// What the page "Make a paper" shows.
///
/// @param form the choice as it stands, with its faults
/// @param ladders every ladder to choose from
/// @param ladder the ladder that is chosen
/// @param grades the grades of that ladder
/// @param sought what was looked for by its printed name, if anything was
/// @param notFound why it was not found
/// @param latest the last papers
public record PapersView(
        Form form,
        List<Choice> ladders,
        Choice ladder,
        List<Choice> grades,
        String sought,
        Optional<String> notFound,
        List<Entry> latest) {

    /// The most forms that are made while a teacher waits.
    public static final int MOST_FORMS = 20;

    public PapersView {
        ladders = List.copyOf(ladders);
        grades = List.copyOf(grades);
        latest = List.copyOf(latest);
    }

    /// Something to choose, by the name it goes by and the name that people read.
    public record Choice(String id, String name) {}

    /// Papers that were made, with the day in words of the reader.
    public record Entry(String id, String ladder, String grade, int forms, String day) {}
}
