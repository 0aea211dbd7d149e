package tamabako.desk.room;

import java.util.Optional;

/// Who may sit down.
record JoinRules(RoomState room) {

    Decision decide(RoomCommand.Join join) {
        Optional<String> name = SeatName.clean(join.name());
        if (room.locked()) {
            return Decision.refuse(Refusal.LOCKED);
        }
        if (name.isEmpty()) {
            return Decision.refuse(Refusal.BAD_NAME);
        }
        boolean isTaken =
                room.seats().present().anyMatch(seat -> isSame(seat, name.get(), join.pupil()));
        if (isTaken) {
            return Decision.refuse(Refusal.NAME_TAKEN);
        }
        if (isFull()) {
            return Decision.refuse(Refusal.FULL);
        }
        int number = room.seats().count() + 1;
        return Decision.accept(
                new RoomEvent.Joined(
                        number, name.get(), join.pupil(), join.key(), join.extraTime()));
    }

    /// Counting is only needed where the numbers ran out.
    private boolean isFull() {
        int most = room.setup().most();
        return room.seats().count() >= Setup.MOST_SEATS
                || (room.seats().count() >= most && room.seats().present().count() >= most);
    }

    private static boolean isSame(Seat seat, String name, String pupil) {
        return pupil.isBlank() ? seat.name().equalsIgnoreCase(name) : seat.pupil().equals(pupil);
    }

    /// A locked room lets nobody new in, but a pupil whose tablet broke goes on with another.
    Decision decide(RoomCommand.AskTakeOver ask) {
        Optional<Seat> seat = room.seats().find(ask.seat()).filter(one -> !one.removed());
        return seat.isEmpty()
                ? Decision.refuse(Refusal.NOT_YOURS)
                : Decision.accept(new RoomEvent.TakeOverAsked(ask.seat(), ask.key()));
    }
}
