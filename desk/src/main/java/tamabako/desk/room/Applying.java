package tamabako.desk.room;

import java.util.List;
import tamabako.desk.room.Seat.Keys;

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
                    room.with(
                            seats.change(seat, one -> one.with(new Seat.Aid(percent, one.way()))));
            case RoomEvent.WayGiven(int seat, Way way) ->
                    room.with(
                            seats.change(
                                    seat, one -> one.with(new Seat.Aid(one.extraTime(), way))));
            case RoomEvent.TakeOverAsked(int seat, String key) ->
                    room.with(seats.change(seat, one -> one.with(asked(one.keys(), key))));
            case RoomEvent.TakenOver(int seat) ->
                    room.with(seats.change(seat, one -> one.with(moved(one.keys()))));
            case RoomEvent.Started(long at) ->
                    in(room, new Phase.Running(at, room.phase().worked(at)));
            case RoomEvent.Paused(long at) -> in(room, new Phase.Paused(room.phase().worked(at)));
            case RoomEvent.TimeAdded(long more) -> room.with(room.now().withAdded(more));
            case RoomEvent.Ended(long at) -> in(room, new Phase.Ended(at, room.phase().worked(at)));
            case RoomEvent.Turned(Turn turn) -> room.with(room.now().with(turn));
            case RoomEvent.RowSaid(int rows) -> room.with(room.now().withSaid(rows));
            case RoomEvent.HandsRaised(int problem, int hands) ->
                    room.with(room.now().with(room.hands().with(problem, hands)));
            case RoomEvent.Ran(int seat, int problem, boolean exact) ->
                    room.with(seats.change(seat, one -> one.ran(problem, exact)));
            case RoomEvent.RoundSet(int round) -> room.before(round);
            case RoomEvent.Answered answered ->
                    room.with(seats.change(answered.seat(), one -> one.with(answered)));
            case RoomEvent.HandedIn(int seat, int number) ->
                    room.with(seats.change(seat, one -> one.done(number)));
            case RoomEvent.CameLater came ->
                    room.with(
                            seats.change(
                                    came.seat(), one -> one.with(came.number(), came.later())));
            case RoomEvent.Passed(int seat, int number) ->
                    room.with(seats.change(seat, one -> one.passed(number)));
            case RoomEvent.LetIn(int seat, Later later) ->
                    room.with(
                            seats.change(
                                    seat, one -> one.without(later, later.run() == room.run())));
            case RoomEvent.LeftOut(int seat) ->
                    room.with(seats.change(seat, one -> one.with(List.<Later>of())));
            case RoomEvent.Forgotten(int place, List<Integer> sat) ->
                    Forgetting.apply(room, place, sat);
            case RoomEvent.Closed(long at) -> room.with(new Doors.Closed(at));
            case RoomEvent.Cleared _ -> room.with(new Doors.Gone());
        };
    }

    private static RoomState in(RoomState room, Phase phase) {
        return room.with(room.now().with(phase));
    }

    private static Keys asked(Keys keys, String key) {
        return new Keys(keys.key(), keys.former(), key);
    }

    private static Keys moved(Keys keys) {
        return new Keys(keys.asking(), keys.key(), "");
    }
}
