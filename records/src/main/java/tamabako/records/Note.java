package tamabako.records;

import java.time.Instant;

/// What a teacher wrote about a pupil.
///
/// @param id opaque
/// @param pupilId the pupil
/// @param writtenAt when
/// @param words what was written
public record Note(String id, String pupilId, Instant writtenAt, String words) {

    /// A note under a fresh identity.
    public static Note of(String pupilId, Instant writtenAt, String words) {
        return new Note(Identity.fresh(), pupilId, writtenAt, words);
    }
}
