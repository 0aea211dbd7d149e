package tamabako.desk.room;

import tamabako.desk.room.Seat.Keys;
import tamabako.desk.room.Seat.Late;

/// What each event changes.
final class Applying {

    private Applying() {}

    static RoomState apply(RoomState before, RoomEvent event) {
        RoomState room = before.counted();
        Seats seats = room.seats();
        return switch (event) {
            case RoomEvent.CodeChanged changed -> room.with(changed);
            case RoomEvent.Locked(boolean on) -> room.withLocked(on);
            case RoomEvent.MarksShown(boolean on) -> room.withMarksShown(on);
            case RoomEvent.Joined joined ->
                    room.with(seats.and(Seat.fresh(joined, room.current().activity().answers())));
            case RoomEvent.Removed(int seat) -> room.with(seats.change(seat, Seat::gone));
            case RoomEvent.Renamed(int seat, String name) ->
                    room.with(seats.change(seat, one -> one.named(name)));
            case RoomEvent.ExtraTimeGiven(int seat, int percent) ->
                    room.with(seats.change(seat, one -> one.withExtraTime(percent)));
            case RoomEvent.TakeOverAsked(int seat, String key) ->
                    room.with(seats.change(seat, one -> one.with(asked(one.keys(), key))));
            case RoomEvent.TakenOver(int seat) ->
                    room.with(seats.change(seat, one -> one.with(moved(one.keys()))));
            case RoomEvent.Started(long at) ->
                    room.with(new Phase.Running(at, room.phase().worked(at)));
            case RoomEvent.Paused(long at) -> room.with(new Phase.Paused(room.phase().worked(at)));
            case RoomEvent.TimeAdded(long more) -> room.withAdded(more);
            case RoomEvent.Ended(long at) ->
                    room.with(new Phase.Ended(at, room.phase().worked(at)));
            case RoomEvent.RoundSet(int round) -> room.before(round);
            case RoomEvent.Answered answered ->
                    room.with(seats.change(answered.seat(), one -> one.with(answered)));
            case RoomEvent.HandedIn(int seat, int number) ->
                    room.with(seats.change(seat, one -> one.done(number)));
            case RoomEvent.CameLate(int seat) ->
                    room.with(seats.change(seat, one -> one.with(Late.WAITING)));
            case RoomEvent.LateAdmitted(int seat) ->
                    room.with(seats.change(seat, one -> one.with(Late.ADMITTED)));
            case RoomEvent.Closed _ -> room.gone();
        };
    }

    private static Keys asked(Keys keys, String key) {
        return new Keys(keys.key(), keys.former(), key);
    }

    private static Keys moved(Keys keys) {
        return new Keys(keys.asking(), keys.key(), "");
    }
}
