package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Numbering;

/// A paper before its problems are numbered.
///
/// @param sections in the order of the grade
record PaperDraft(Grade grade, List<SectionDraft> sections) {

    PaperDraft {
        sections = List.copyOf(sections);
    }

    /// All problems, section by section.
    List<Problem> problems() {
        return sections.stream().flatMap(section -> section.problems().stream()).toList();
    }

    /// The sections, their problems numbered as the grade does.
    List<PaperSection> numbered() {
        List<PaperSection> numbered = new ArrayList<>();
        int first = 1;
        for (SectionDraft draft : sections) {
            PaperSection section = draft.numbered(first);
            numbered.add(section);
            first +=
                    switch (grade.numbering()) {
                        case Numbering.THROUGH -> section.problems().size();
                        case Numbering.BY_SECTION -> 0;
                    };
        }
        return numbered;
    }
}
