package tamabako.insight.readiness;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Pass;

/// What can be reached in a paper: to pass, or each of its ranks from the lowest up.
sealed interface Goals permits EachSection, WholePaper {

    /// The goals of a grade for a pupil who sits these sections.
    static Goals of(Grade grade, List<Outline.Part> parts) {
        int[] points = points(grade.pass());
        return Sitting.isOfWhole(grade.pass())
                ? new WholePaper(parts, points, grade.time())
                : new EachSection(parts, points, inRight(grade.pass()), grade.time());
    }

    private static int[] points(Pass pass) {
        return switch (pass) {
            case Pass.Whole(int points) -> new int[] {points};
            case Pass.PointsInEach(int points) -> new int[] {points};
            case Pass.RightInEach(int answers) -> new int[] {answers};
            case Pass.ByScore byScore ->
                    byScore.ranks().stream().mapToInt(Pass.Rank::points).toArray();
        };
    }

    private static boolean inRight(Pass pass) {
        return pass instanceof Pass.RightInEach;
    }

    /// How many there are.
    int count();

    /// Whether they are of the whole paper and not of each section.
    boolean whole();

    /// The time of the whole paper, where it has one.
    Optional<Duration> time();

    /// The most that [#add] reckons with.
    int most();

    /// What is read off the scores of the first so many problems of a section.
    FirstProblems.Reading reading(int section);

    /// How a section's table is put together from them.
    SectionTable.Putting putting(int section);

    /// Adds `weight` times the chance to reach each goal to `chances`.
    ///
    /// @param at where the numbers of the pupil begin in each table
    void add(
            SectionTable[] tables,
            int[] at,
            double weight,
            double[] chances,
            double[] scores,
            double[] spare);

    /// The chance to reach one goal.
    ///
    /// @param at where the numbers of the pupil begin in each table
    double chance(SectionTable[] tables, int[] at, int goal, double[] scores, double[] spare);

    /// Adds `weight` times the chance to reach a goal in a section, and the points to be expected
    /// there, to `told`.
    void addSection(
            SectionTable table, int section, int goal, int at, double weight, double[] told);
}
