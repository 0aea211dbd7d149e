package tamabako.records;

import java.time.Instant;
import java.util.Optional;

/// That a sheet was handed out: to a whole group, or to one pupil.
///
/// @param id opaque
/// @param sheetId the sheet
/// @param groupId the group that got it
/// @param pupilId the one pupil who got it; empty where the whole group did
/// @param at when
public record Handout(
        String id, String sheetId, String groupId, Optional<String> pupilId, Instant at) {

    /// A handout under a fresh identity.
    public static Handout of(String sheetId, Pupil pupil, Instant at) {
        return new Handout(Identity.fresh(), sheetId, pupil.groupId(), Optional.of(pupil.id()), at);
    }

    /// A handout to a whole group, under a fresh identity.
    public static Handout of(String sheetId, Group group, Instant at) {
        return new Handout(Identity.fresh(), sheetId, group.id(), Optional.empty(), at);
    }
}
