package tamabako.records;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// What one pupil handed in for one sheet, answer by answer in the sheet's order.
///
/// @param id opaque
/// @param sheetId the sheet that was worked
/// @param pupilId whose work it is; empty where the teacher did not say
/// @param handedAt when it was handed in
/// @param answers the answers as written, with their marks
/// @param took how long the whole of it took, where that is known
public record Work(
        String id,
        String sheetId,
        Optional<String> pupilId,
        Instant handedAt,
        List<MarkedAnswer> answers,
        Optional<Duration> took) {

    public Work {
        answers = List.copyOf(answers);
    }

    /// Work whose time nobody took as a whole.
    public Work(
            String id,
            String sheetId,
            Optional<String> pupilId,
            Instant handedAt,
            List<MarkedAnswer> answers) {
        this(id, sheetId, pupilId, handedAt, answers, Optional.empty());
    }

    /// Work under a fresh identity.
    public static Work of(
            String sheetId,
            Optional<String> pupilId,
            Instant handedAt,
            List<MarkedAnswer> answers) {
        return new Work(Identity.fresh(), sheetId, pupilId, handedAt, answers);
    }

    /// The same work, which took so long.
    public Work taking(Optional<Duration> time) {
        return new Work(id, sheetId, pupilId, handedAt, answers, time);
    }

    /// The same work with its answers read anew.
    public Work answered(List<MarkedAnswer> corrected) {
        return new Work(id, sheetId, pupilId, handedAt, corrected, took);
    }

    /// How many answers count as right.
    public long right() {
        return answers.stream().filter(MarkedAnswer::right).count();
    }

    /// An answer as written, its mark as one word (`right`, `wrong`, `wrong-form`, `empty` or
    /// `unclear`), and how long the pupil took for it, where that is known.
    public record MarkedAnswer(String written, String mark, Optional<Duration> took) {

        /// An answer whose time nobody took.
        public MarkedAnswer(String written, String mark) {
            this(written, mark, Optional.empty());
        }

        /// Whether it counts as right.
        public boolean right() {
            return mark.equals("right");
        }
    }
}
