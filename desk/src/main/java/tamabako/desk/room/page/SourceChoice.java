package tamabako.desk.room.page;

/// Something that a room can be opened for.
///
/// @param key how the form names it
/// @param title what it is called
public record SourceChoice(String key, String title) {}
