package tamabako.desk.room;

/// A seat that goes on to the tablet that asked for it, or does not.
final class TakeOver {

    private TakeOver() {}

    static Decision decide(RoomState room, int seat, boolean yes) {
        boolean isAsked =
                room.seats().find(seat).filter(one -> !one.keys().asking().isEmpty()).isPresent();
        if (!isAsked) {
            return Decision.refuse(Refusal.NOBODY_ASKS);
        }
        return Decision.accept(
                yes ? new RoomEvent.TakenOver(seat) : new RoomEvent.TakeOverAsked(seat, ""));
    }
}
