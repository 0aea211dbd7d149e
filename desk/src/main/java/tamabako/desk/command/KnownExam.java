package tamabako.desk.command;

import java.util.List;
import java.util.Optional;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.file.LadderTexts;
import tamabako.problems.grade.file.Ladders;

/// What came of an exam of a grade that is known.
record KnownExam(ExamOutcome outcome, Grade grade) {

    /// Looks up ladder and grade.
    ///
    /// @param asked the ladder that the command was asked for; others are found if they are shipped
    /// @throws Unreadable if the ladder, the grade, the rank or a section is not known
    static KnownExam of(ExamOutcome outcome, Ladder asked) {
        Ladder ladder =
                Optional.of(asked)
                        .filter(one -> one.id().equals(outcome.ladder()))
                        .or(() -> Ladders.ladder(outcome.ladder()))
                        .orElseThrow(
                                () -> unknown("ladder", outcome.ladder(), LadderTexts.names()));
        Grade grade =
                ladder.grade(outcome.grade())
                        .orElseThrow(() ->
                                unknown(
                                        "grade",
                                        outcome.grade(),
                                        ladder.grades().stream().map(Grade::id).toList()));
        List<String> ranks =
                grade.pass() instanceof Pass.ByScore byScore
                        ? byScore.ranks().stream().map(Pass.Rank::id).toList()
                        : List.of();
        outcome.rank()
                .filter(rank -> !ranks.contains(rank))
                .ifPresent(rank -> {
                    throw unknown("rank", rank, ranks);
                });
        List<String> sections = grade.sections().stream().map(Section::id).toList();
        outcome.points().keySet().stream()
                .filter(section -> !sections.contains(section))
                .findFirst()
                .ifPresent(section -> {
                    throw unknown("points", section, sections);
                });
        return new KnownExam(outcome, grade);
    }

    private static Unreadable unknown(String field, String written, List<String> known) {
        return new Unreadable(
                field, new Reason.UnknownWord("\"" + Unreadable.shown(written) + "\"", known));
    }
}
