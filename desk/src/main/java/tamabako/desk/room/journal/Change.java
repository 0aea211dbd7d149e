package tamabako.desk.room.journal;

import java.util.List;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;

/// What happened in a room since it was looked at last.
///
/// @param before the state before
/// @param after the state now
/// @param events what lies between
public record Change(RoomState before, RoomState after, List<RoomEvent> events) {
    public Change {
        events = List.copyOf(events);
    }
}
