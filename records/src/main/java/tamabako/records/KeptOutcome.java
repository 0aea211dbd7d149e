package tamabako.records;

import tamabako.problems.grade.ExamOutcome;

/// What came of one exam, as it is kept of one pupil.
///
/// @param id opaque
public record KeptOutcome(String id, String pupilId, ExamOutcome outcome) {

    /// An outcome under a fresh identity.
    public static KeptOutcome of(String pupilId, ExamOutcome outcome) {
        return new KeptOutcome(Identity.fresh(), pupilId, outcome);
    }
}
