package tamabako.records;

import java.time.Instant;

/// A ladder of the teacher's own.
///
/// @param id the name the ladder goes by
/// @param yaml its file as the teacher wrote it
/// @param keptAt when it was kept last
public record OwnLadder(String id, String yaml, Instant keptAt) {}
