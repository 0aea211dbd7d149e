package tamabako.desk.sheet;

import java.util.List;
import java.util.Optional;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.ladder.KnownLadders.Known;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;

/// A section of a grade of a ladder, as it is chosen step by step: where a step does not name one
/// that is there, the first is taken, so that changing the ladder always leads somewhere.
///
/// @param ladders every ladder to choose from
record SectionChoice(List<Known> ladders, Known known, Grade grade, Section section) {

    static SectionChoice of(KnownLadders ladders, Form form) {
        List<Known> all = ladders.all();
        Known known =
                all.stream()
                        .filter(one -> one.ladder().id().equals(form.text("ladder")))
                        .findFirst()
                        .orElseGet(all::getFirst);
        Grade grade =
                known.ladder()
                        .grade(form.text("grade"))
                        .orElseGet(() -> known.ladder().grades().getFirst());
        Optional<Section> section = grade.section(form.text("section"));
        return new SectionChoice(
                all, known, grade, section.orElseGet(() -> grade.sections().getFirst()));
    }

    Practice.OfSection practice() {
        return new Practice.OfSection(known.ladder().id(), grade, section);
    }
}
