package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.insight.pace.WorkParts;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;

/// What the papers of a grade take pupils in general, problem by problem.
///
/// @param ladder the name of the ladder that the grade is of
/// @param parts one for each section, in the order of the paper
public record Outline(String ladder, Grade grade, List<Part> parts) {

    /// So many papers are looked at; a problem of the outline is their mean at its place.
    private static final int PAPERS = 2;

    public Outline {
        parts = List.copyOf(parts);
    }

    /// A section of the paper.
    ///
    /// @param tasks its problems in their order
    public record Part(Section section, Field field, List<Task> tasks) {

        public Part {
            tasks = List.copyOf(tasks);
        }

        /// The slips to be expected of pupils in general in one of its problems, in the mean.
        public double slips() {
            return tasks.stream().mapToDouble(Task::slips).average().orElse(0);
        }
    }

    /// The outline of the papers of `grade`; empty if no such paper can be made. It is made anew at
    /// every call, and worth keeping.
    ///
    /// @param ladder the name of the ladder that the grade is of
    public static Optional<Outline> of(String ladder, Grade grade, EventTables tables) {
        PaperMaker maker = PaperMaker.of(ladder, grade);
        List<Paper> papers = new ArrayList<>();
        for (int seed = 1; seed <= PAPERS; seed++) {
            switch (maker.make(PaperId.draw(() -> 0), seed, List.of())) {
                case PaperMade.Found(Paper paper, _) -> papers.add(paper);
                case PaperMade.NotMade _ -> {
                    return Optional.empty();
                }
            }
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < grade.sections().size(); i++) {
            int place = i;
            Section section = grade.sections().get(i);
            List<List<Problem>> sets =
                    papers.stream().map(paper -> paper.sections().get(place).problems()).toList();
            parts.add(new Part(section, Field.of(section), means(sets, tables)));
        }
        return Optional.of(new Outline(ladder, grade, parts));
    }

    private static List<Task> means(List<List<Problem>> sets, EventTables tables) {
        List<Task> means = new ArrayList<>();
        for (int i = 0; i < sets.getFirst().size(); i++) {
            int place = i;
            List<Task> here = sets.stream().map(set -> Task.of(set.get(place), tables)).toList();
            means.add(
                    new Task(
                            here.stream().mapToDouble(Task::slips).average().orElseThrow(),
                            here.stream().mapToDouble(Task::seconds).average().orElseThrow(),
                            Optional.of(
                                    WorkParts.mean(
                                            here.stream()
                                                    .flatMap(task -> task.parts().stream())
                                                    .toList()))));
        }
        return means;
    }
}
