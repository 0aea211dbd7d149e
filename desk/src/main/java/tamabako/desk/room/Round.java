package tamabako.desk.room;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Problem;

/// One round of a room: a sheet, a section of a paper, or a whole paper.
///
/// @param title what the class sees above it
/// @param sheet the name of the sheet in the class book that the answers are kept under
/// @param activity what is done
/// @param limit how long it takes; empty where everybody takes the time they need
public record Round(String title, String sheet, Activity activity, Optional<Duration> limit) {

    /// The problems of the round.
    public List<Problem> problems() {
        return activity.problems();
    }
}
