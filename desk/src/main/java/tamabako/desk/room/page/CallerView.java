package tamabako.desk.room.page;

/// The caller's page of a room.
///
/// @param room the room
/// @param run which run of a round it is
/// @param json the calls for the page script
/// @param notes the count so far, as JSON: pairs of a call and how many
public record CallerView(RoomView room, int run, String json, String notes) {}
