package tamabako.desk.room.page;

/// What the projector shows.
///
/// @param room the room
/// @param qr the address to join by, with the code
public record BoardView(RoomView room, Qr qr) {}
