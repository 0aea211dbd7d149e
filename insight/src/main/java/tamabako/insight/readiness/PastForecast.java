package tamabako.insight.readiness;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.Pass;

/// What was to be foretold of an exam on the evening before it, and what came of it.
///
/// It is worked out anew from the answers of the days before the exam, uncorrected, so that it is
/// always the judgement of the forecast that speaks today, and that answers which were written down
/// later count as well.
public final class PastForecast {

    private PastForecast() {}

    /// What was told and what came; empty where the exam was not sat, where the ranks of the grade
    /// have changed since, or where too little was known on the day before.
    ///
    /// Of a grade with ranks it is the chance of the rank that was to be reached next, and whether
    /// that or a higher one was.
    ///
    /// @param answers all of the pupil; those of the day of the exam and later ones, and those of
    ///   no known day, are left out
    /// @param outline of the grade that was sat
    public static Optional<Recalibration.Outcome> of(
            List<Worked> answers, Variety variety, Outline outline, ExamOutcome outcome) {
        if (!outcome.isSat()) {
            return Optional.empty();
        }
        long day = outcome.day().toEpochDay();
        List<Worked> before =
                answers.stream()
                        .filter(answer ->
                                answer.day().isPresent() && answer.day().getAsLong() < day)
                        .toList();
        Standing standing = Standing.of(before, variety, OptionalLong.of(day));
        List<Chance> chances = Forecast.PLAIN.chances(standing, outline);
        return chances.isEmpty() ? Optional.empty() : held(chances, outline, outcome);
    }

    private static Optional<Recalibration.Outcome> held(
            List<Chance> chances, Outline outline, ExamOutcome outcome) {
        if (!(outline.grade().pass() instanceof Pass.ByScore byScore)) {
            boolean passed = outcome.came() == ExamOutcome.Came.PASSED;
            return Optional.of(new Recalibration.Outcome(chances.getFirst().likely(), passed));
        }
        int next = Forecast.next(chances);
        List<String> ranks = byScore.ranks().stream().map(Pass.Rank::id).toList();
        int reached = outcome.rank().map(ranks::indexOf).orElse(-1);
        boolean isKnown = outcome.came() != ExamOutcome.Came.PASSED || reached >= 0;
        return isKnown
                ? Optional.of(
                        new Recalibration.Outcome(chances.get(next).likely(), reached >= next))
                : Optional.empty();
    }
}
