package tamabako.desk.progress;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import tamabako.insight.plan.Exercises;
import tamabako.insight.plan.NextPractice;
import tamabako.insight.plan.PlanWish;
import tamabako.insight.plan.Planner;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Attempt;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;

/// Plans what pupils practise next for the grade that is next for them. What can be practised for a
/// grade is worked out once.
final class Planning {

    private final NextOnLadder next;
    private final EventTables tables;
    private final Map<Grade, Exercises> exercises = new ConcurrentHashMap<>();

    Planning(NextOnLadder next, EventTables tables) {
        this.next = next;
        this.tables = tables;
    }

    /// What is asked of a plan.
    ///
    /// @param count how many problems
    /// @param daysToExam how many days there are until the exam; empty where none is set
    /// @param seed the same seed makes the same plan of the same pupil
    record Asked(int count, OptionalInt daysToExam, long seed) {}

    /// A plan, and the grade that it is for.
    record Planned(Readiness readiness, NextPractice practice) {}

    /// What `pupil` is to practise next; empty where nothing is known of the pupil, or nothing can
    /// be made for the grade. No sum that the pupil has had comes again.
    Optional<Planned> plan(Judged pupil, Asked asked) {
        return next.of(pupil)
                .map(readiness -> new Planned(readiness, practice(pupil, readiness, asked)))
                .filter(planned -> !planned.practice().items().isEmpty());
    }

    private NextPractice practice(Judged pupil, Readiness readiness, Asked asked) {
        Exercises known =
                exercises.computeIfAbsent(
                        readiness.grade(),
                        grade -> Exercises.of(readiness.ladder(), grade, tables));
        Set<Problem> had = new HashSet<>();
        for (Attempt attempt : pupil.gathered().attempts()) {
            had.add(attempt.problem());
        }
        return Planner.of(known)
                .plan(
                        pupil.lacks(),
                        readiness,
                        new PlanWish(
                                asked.count(),
                                asked.daysToExam(),
                                had,
                                asked.seed() + 31L * pupil.gathered().pupil().id().hashCode()));
    }
}
