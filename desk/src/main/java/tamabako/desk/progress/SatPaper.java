package tamabako.desk.progress;

import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Reached;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// Work on a whole paper of a grade, as an exam that was sat at this desk.
final class SatPaper {

    private static final String EMPTY = "empty";

    private SatPaper() {}

    /// What came of it; empty where the paper was not worked whole, where it was not under its
    /// clock or that is not known, or where a section to be chosen is missing.
    ///
    /// Under its clock is work whose known time is no longer than the paper's; where each section
    /// has its own time, and every answer is timed, each section's answers are held against that.
    ///
    /// @param day when it was handed in
    static Optional<ExamOutcome> outcome(Paper paper, Work work, LocalDate day) {
        boolean isWhole = work.answers().size() == paper.problems().size();
        if (!isWhole || !isUnderItsClock(paper, work)) {
            return Optional.empty();
        }
        Map<String, Integer> points = points(paper, work);
        return Reached.of(paper.grade(), points)
                .map(reached ->
                        new ExamOutcome(
                                day,
                                paper.ladder(),
                                paper.grade().id(),
                                reached.passed() ? Came.PASSED : Came.NOT_PASSED,
                                reached.rank().map(Pass.Rank::id),
                                points));
    }

    private static boolean isUnderItsClock(Paper paper, Work work) {
        Grade grade = paper.grade();
        if (grade.time().isPresent()) {
            return isWithin(time(work), grade.time());
        }
        int from = 0;
        boolean isTimed = work.answers().stream().allMatch(SatPaper::isTimedOrEmpty);
        Duration all = Duration.ZERO;
        for (PaperSection part : paper.sections()) {
            int to = from + part.problems().size();
            Optional<Duration> limit = part.section().time();
            if (isTimed
                    && limit.isPresent()
                    && !isWithin(sum(work.answers().subList(from, to)), limit)) {
                return false;
            }
            all = all.plus(limit.orElse(Duration.ZERO));
            from = to;
        }
        boolean hasClock = !all.isZero();
        return !hasClock || isWithin(time(work), Optional.of(all));
    }

    private static boolean isWithin(Optional<Duration> took, Optional<Duration> limit) {
        return took.filter(time -> time.compareTo(limit.orElse(time)) <= 0).isPresent();
    }

    /// How long the whole of it took, where that is known.
    private static Optional<Duration> time(Work work) {
        return work.took().or(() -> sum(work.answers()));
    }

    private static boolean isTimedOrEmpty(MarkedAnswer answer) {
        return answer.took().isPresent() || answer.mark().equals(EMPTY);
    }

    private static Optional<Duration> sum(List<MarkedAnswer> answers) {
        return answers.stream().allMatch(SatPaper::isTimedOrEmpty)
                ? Optional.of(
                        answers.stream()
                                .flatMap(answer -> answer.took().stream())
                                .reduce(Duration.ZERO, Duration::plus))
                : Optional.empty();
    }

    /// Of the sections to choose from, those in which nothing was written were not sat.
    private static Map<String, Integer> points(Paper paper, Work work) {
        Map<String, Integer> points = new LinkedHashMap<>();
        int from = 0;
        for (PaperSection part : paper.sections()) {
            int to = from + part.problems().size();
            List<MarkedAnswer> answers = work.answers().subList(from, to);
            from = to;
            boolean isBlank = answers.stream().allMatch(one -> one.mark().equals(EMPTY));
            if (paper.grade().isForAll(part.section()) || !isBlank) {
                int right = (int) answers.stream().filter(MarkedAnswer::right).count();
                points.put(part.section().id(), right * part.section().points());
            }
        }
        return points;
    }
}
