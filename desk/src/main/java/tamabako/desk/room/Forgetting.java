package tamabako.desk.room;

import java.util.List;
import java.util.stream.IntStream;

/// A pupil who is erased from the class book leaves the rooms too.
public final class Forgetting {

    private Forgetting() {}

    static Decision decide(RoomState room, String pupil) {
        List<Expected> expected = room.setup().pupils();
        int place =
                IntStream.range(0, expected.size())
                        .filter(i -> expected.get(i).pupil().equals(pupil))
                        .findFirst()
                        .orElse(-1);
        List<Integer> seats =
                room.seats()
                        .all()
                        .filter(seat -> seat.pupil().equals(pupil))
                        .map(Seat::number)
                        .toList();
        return pupil.isBlank() || (place < 0 && seats.isEmpty())
                ? Decision.accept()
                : Decision.accept(new RoomEvent.Forgotten(place, seats));
    }

    static RoomState apply(RoomState room, int place, List<Integer> seats) {
        RoomState changed = place < 0 ? room : room.with(room.setup().without(place));
        for (int seat : seats) {
            changed = changed.with(changed.seats().change(seat, Seat::forgotten));
        }
        return changed;
    }

    /// What an event of the past still tells once these seats are forgotten: that something
    /// happened, so that the count of events stays, and nothing of the pupil.
    public static RoomEvent blank(RoomEvent event, List<Integer> seats) {
        return event instanceof RoomEvent.OfSeat of && seats.contains(of.seat())
                ? blank(of)
                : event;
    }

    private static RoomEvent blank(RoomEvent.OfSeat event) {
        return switch (event) {
            case RoomEvent.Joined joined -> new RoomEvent.Joined(joined.seat(), "", "", "", 0);
            case RoomEvent.Renamed(int seat, _) -> new RoomEvent.Renamed(seat, "");
            case RoomEvent.ExtraTimeGiven(int seat, _) -> new RoomEvent.ExtraTimeGiven(seat, 0);
            case RoomEvent.WayGiven(int seat, _) -> new RoomEvent.WayGiven(seat, Way.CLASS);
            case RoomEvent.TakeOverAsked(int seat, _) -> new RoomEvent.TakeOverAsked(seat, "");
            case RoomEvent.Answered answered ->
                    new RoomEvent.Passed(answered.seat(), answered.number());
            case RoomEvent.CameLater came -> new RoomEvent.Passed(came.seat(), came.number());
            case RoomEvent.HandedIn(int seat, int number) -> new RoomEvent.Passed(seat, number);
            case RoomEvent.Ran(int seat, _, _) -> new RoomEvent.LeftOut(seat);
            case RoomEvent.LetIn(int seat, _) -> new RoomEvent.LeftOut(seat);
            case RoomEvent.Removed _,
                    RoomEvent.TakenOver _,
                    RoomEvent.Passed _,
                    RoomEvent.LeftOut _ ->
                    event;
        };
    }
}
