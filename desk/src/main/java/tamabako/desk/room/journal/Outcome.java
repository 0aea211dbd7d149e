package tamabako.desk.room.journal;

import tamabako.desk.room.Decision;
import tamabako.desk.room.RoomState;

/// What came of a command, told after it was kept.
///
/// @param decision what was decided
/// @param room the state right after it
public record Outcome(Decision decision, RoomState room) {}
