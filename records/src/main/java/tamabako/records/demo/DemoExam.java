package tamabako.records.demo;

import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Reached;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;
import tamabako.records.Work.MarkedAnswer;

/// An exam that a group of the demo went to: each simulated pupil sits the paper against its clock.
///
/// @param grade the grade, of [DemoTerm#LADDER]
/// @param daysAgo when it was held
record DemoExam(String grade, int daysAgo) {

    private static final int AWAY_PER_HUNDRED = 8;

    /// What came of it for one pupil. The paper is one that the pupil has not seen.
    ///
    /// @param day when it was held
    ExamOutcome sit(DemoPupil pupil, LocalDate day, SplittableRandom chance) {
        if (chance.nextInt(100) < AWAY_PER_HUNDRED) {
            return outcome(day, Came.NOT_SAT, Optional.empty(), Map.of());
        }
        Map<String, Integer> points =
                points(pupil, DemoTerm.paper(grade, chance.nextLong()), chance);
        Reached reached =
                Reached.of(DemoTerm.grade(grade), points)
                        .orElseThrow(() ->
                                new IllegalStateException("Every section was sat: " + points));
        return outcome(
                day,
                reached.passed() ? Came.PASSED : Came.NOT_PASSED,
                reached.rank().map(Pass.Rank::id),
                points);
    }

    private ExamOutcome outcome(
            LocalDate day, Came came, Optional<String> rank, Map<String, Integer> points) {
        return new ExamOutcome(day, DemoTerm.LADDER, grade, came, rank, points);
    }

    /// A problem counts if it is right and done before the section's time, or the paper's, is over.
    private Map<String, Integer> points(DemoPupil pupil, Paper paper, SplittableRandom chance) {
        Map<String, Integer> points = new LinkedHashMap<>();
        Duration spent = Duration.ZERO;
        for (PaperSection part : paper.sections()) {
            if (paper.grade().time().isEmpty()) {
                spent = Duration.ZERO;
            }
            Optional<Duration> limit = paper.grade().time().or(() -> part.section().time());
            int right = 0;
            List<MarkedAnswer> answers = pupil.work(part.problems(), daysAgo / 7.0, chance);
            for (MarkedAnswer answer : answers) {
                spent = spent.plus(answer.took().orElseThrow());
                Duration until = spent;
                boolean inTime = limit.filter(time -> until.compareTo(time) > 0).isEmpty();
                right += inTime && answer.right() ? 1 : 0;
            }
            points.put(part.section().id(), right * part.section().points());
        }
        return points;
    }
}
