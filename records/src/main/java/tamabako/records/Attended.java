package tamabako.records;

import java.time.LocalDate;

/// Whether a pupil came on one day.
///
/// @param pupilId the pupil
/// @param day the day where the lesson was
/// @param how what became of it
public record Attended(String pupilId, LocalDate day, How how) {

    /// How a pupil attended.
    public enum How {
        PRESENT,
        LATE,
        ABSENT
    }
}
