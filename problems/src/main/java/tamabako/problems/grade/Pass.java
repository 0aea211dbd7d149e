package tamabako.problems.grade;

import java.util.List;

/// What has to be reached.
public sealed interface Pass {

    /// So many points in the whole paper.
    record Whole(int points) implements Pass {}

    /// So many points in each section that is sat.
    record PointsInEach(int points) implements Pass {}

    /// So many right answers in each section that is sat.
    record RightInEach(int answers) implements Pass {}

    /// The score tells which rank is reached: the highest whose points it has.
    ///
    /// @param ranks from the lowest up
    /// @param scored what the score is
    record ByScore(List<Rank> ranks, Scored scored) implements Pass {
        public ByScore {
            ranks = List.copyOf(ranks);
        }
    }

    /// A rank that a score reaches, such as a dan.
    ///
    /// @param id the name it goes by within its grade
    /// @param points the least score for it
    record Rank(String id, Label name, int points) {}

    /// What the score of a paper is.
    enum Scored {
        /// The points of the section with the fewest.
        LOWEST_SECTION,
        /// The points of all sections together.
        WHOLE
    }
}
