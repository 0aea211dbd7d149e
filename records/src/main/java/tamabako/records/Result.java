package tamabako.records;

import java.time.LocalDate;
import java.util.Optional;

/// The result of one pupil in one exam or contest.
///
/// @param id opaque
/// @param pupilId the pupil
/// @param kind an exam or a contest
/// @param name which: a grade and its body, or the name of the contest
/// @param day when it was held
/// @param score the points, where they are known
/// @param outcome what came of it in one word, such as `passed`; may be blank
public record Result(
        String id,
        String pupilId,
        Kind kind,
        String name,
        LocalDate day,
        Optional<Score> score,
        String outcome) {

    /// What was taken part in.
    public enum Kind {
        EXAM,
        CONTEST
    }

    /// Points, of so many that could be had.
    public record Score(int points, int most) {}
}
