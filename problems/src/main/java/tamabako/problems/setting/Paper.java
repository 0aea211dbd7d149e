package tamabako.problems.setting;

import java.util.List;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;

/// A paper as it is handed out: one form of a grade's exam.
///
/// @param id its opaque name, a [PaperId] as it is printed; it tells nothing about the answers
/// @param ladder the name of the ladder that the grade is of
/// @param form which of several equal forms it is, from 1
/// @param customs whether it was set with the customs of setters
/// @param sections in the order of the grade
public record Paper(
        String id,
        String ladder,
        Grade grade,
        int form,
        SettersCustoms customs,
        List<PaperSection> sections) {

    public Paper {
        sections = List.copyOf(sections);
        if (form < 1) {
            throw new IllegalArgumentException("Forms count from 1, not " + form + ".");
        }
    }

    /// A paper that keeps the customs.
    public Paper(String id, String ladder, Grade grade, int form, List<PaperSection> sections) {
        this(id, ladder, grade, form, SettersCustoms.KEPT, sections);
    }

    /// All problems, in the order of the paper.
    public List<Problem> problems() {
        return sections.stream().flatMap(section -> section.problems().stream()).toList();
    }
}
