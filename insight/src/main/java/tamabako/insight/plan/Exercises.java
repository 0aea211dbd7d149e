package tamabako.insight.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Problem;
import tamabako.problems.effort.Effort;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;

/// What can be practised for a grade: each section as in the exam, and drills of several lengths.
/// It is dear to make and worth keeping; threads may share it.
public final class Exercises {

    /// So many problems of each sort are looked at.
    private static final int LOOKED_AT = 4;

    /// So many of a section, for its problems differ more.
    private static final int LOOKED_AT_OF_EXAM = 20;

    private static final long SEED = 1;

    /// The level of problems as long as in the exam.
    private static final int AS_LONG = 0;

    /// An exercise, where its problems come from, and how much shorter they are than in the exam.
    private record Sourced(Exercise exercise, Source source, int level) {}

    private final String ladder;
    private final Grade grade;
    private final List<Sourced> all;

    private Exercises(String ladder, Grade grade, List<Sourced> all) {
        this.ladder = ladder;
        this.grade = grade;
        this.all = List.copyOf(all);
    }

    /// The exercises for `grade`; what cannot be made is left out.
    ///
    /// @param ladder the name of the ladder that the grade is of
    public static Exercises of(String ladder, Grade grade, EventTables tables) {
        List<Sourced> all = new ArrayList<>();
        for (Section section : grade.sections()) {
            add(
                    all,
                    new Focus.AsInExam(section.id()),
                    section,
                    new Source.OfSection(ladder, grade, section),
                    AS_LONG,
                    LOOKED_AT_OF_EXAM,
                    tables);
        }
        for (Section section : grade.sections()) {
            for (Drills.Drill drill : Drills.of(section)) {
                add(all, drill.focus(), section, drill.source(), drill.level(), LOOKED_AT, tables);
            }
        }
        return new Exercises(ladder, grade, all);
    }

    private static void add(
            List<Sourced> all,
            Focus focus,
            Section section,
            Source source,
            int level,
            int count,
            EventTables tables) {
        List<Problem> problems = source.make(count, SEED, Set.of());
        if (!problems.isEmpty()) {
            List<EventTable> looked = problems.stream().map(tables::of).toList();
            Load load = Load.of(looked, Effort.of(problems).seconds());
            all.add(new Sourced(new Exercise(focus, section.id(), load), source, level));
        }
    }

    /// The name of the ladder that the grade is of.
    public String ladder() {
        return ladder;
    }

    /// The grade.
    public Grade grade() {
        return grade;
    }

    /// What fits a pupil with these factors: each section as in the exam, and its drills of that
    /// length at which about so many go right. All drills of a section have one length, so that
    /// none is worth more for its length alone.
    ///
    /// @param factors how many times as often as usual slips are made, as a [Load] has them
    /// @param right the chance that is aimed at, 0 to 1
    public List<Exercise> fitting(double[] factors, double right) {
        List<Exercise> fitting = new ArrayList<>();
        for (Section section : grade.sections()) {
            int level = level(section, factors, right);
            all.stream()
                    .filter(one -> one.exercise().section().equals(section.id()))
                    .filter(one -> one.exercise().focus().isAsInExam() || one.level() == level)
                    .forEach(one -> fitting.add(one.exercise()));
        }
        return fitting;
    }

    private int level(Section section, double[] factors, double right) {
        List<Sourced> drills =
                all.stream()
                        .filter(one -> one.exercise().section().equals(section.id()))
                        .filter(one -> !one.exercise().focus().isAsInExam())
                        .toList();
        return drills.stream()
                .map(Sourced::level)
                .distinct()
                .min(
                        Comparator.comparingDouble(level ->
                                Math.abs(
                                        drills.stream()
                                                        .filter(one -> one.level() == level)
                                                        .mapToDouble(one ->
                                                                one.exercise()
                                                                        .load()
                                                                        .right(factors))
                                                        .average()
                                                        .orElse(0)
                                                - right)))
                .orElse(AS_LONG);
    }

    /// `count` problems of an exercise, drawn from `seed`, none of them one of `avoided`; fewer
    /// where no more are found.
    public List<Problem> problems(Exercise exercise, int count, long seed, Set<Problem> avoided) {
        return all.stream()
                .filter(one -> one.exercise().equals(exercise))
                .findFirst()
                .map(one -> one.source().make(count, seed, avoided))
                .orElse(List.of());
    }

    /// Every exercise, of every length.
    public List<Exercise> all() {
        return all.stream().map(Sourced::exercise).toList();
    }

    /// What a section of the exam holds; empty if its problems cannot be made.
    Optional<Load> load(String section) {
        return all.stream()
                .map(Sourced::exercise)
                .filter(one -> one.focus().equals(new Focus.AsInExam(section)))
                .map(Exercise::load)
                .findFirst();
    }
}
