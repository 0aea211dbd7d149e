package tamabako.desk.exam;

import java.util.Locale;
import java.util.Optional;
import tamabako.desk.ladder.KnownLadders;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.Pass;

/// What an exam is called. Where its ladder is gone, the names it went by are all there is.
///
/// @param grade the name of the grade, with the rank that was reached
/// @param ladder the name of the ladder
public record GradeName(String grade, String ladder) {

    /// The names of the exam of `outcome`.
    public static GradeName of(KnownLadders ladders, ExamOutcome outcome, Locale language) {
        Optional<Ladder> ladder = ladders.find(outcome.ladder()).map(KnownLadders.Known::ladder);
        Optional<Grade> grade = ladder.flatMap(known -> known.grade(outcome.grade()));
        return new GradeName(
                grade.map(one -> one.name().in(language)).orElse(outcome.grade()),
                ladder.map(one -> one.name().in(language)).orElse(outcome.ladder()));
    }

    /// The name of the rank that was reached; blank where none was.
    public static String rank(KnownLadders ladders, ExamOutcome outcome, Locale language) {
        return outcome.rank()
                .map(id ->
                        ladders.find(outcome.ladder())
                                .flatMap(known -> known.ladder().grade(outcome.grade()))
                                .map(Grade::pass)
                                .filter(Pass.ByScore.class::isInstance)
                                .map(Pass.ByScore.class::cast)
                                .flatMap(pass ->
                                        pass.ranks().stream()
                                                .filter(rank -> rank.id().equals(id))
                                                .findFirst())
                                .map(rank -> rank.name().in(language))
                                .orElse(id))
                .orElse("");
    }
}
