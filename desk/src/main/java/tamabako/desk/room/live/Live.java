package tamabako.desk.room.live;

import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Way;
import tamabako.desk.room.journal.Change;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.web.Outlet;

/// Tells everybody who looks at a room through this program what is kept there.
public final class Live implements AutoCloseable {

    /// Boards show what is new so often, in milliseconds, however many answers come.
    private static final long BOARD_BEAT = 250;

    private final Map<String, LiveRoom> rooms = new ConcurrentHashMap<>();
    private final Rooms kept;
    private final InstantSource clock;
    private final ScheduledExecutorService beat =
            Executors.newSingleThreadScheduledExecutor(
                    Thread.ofPlatform().daemon().name("room-boards").factory());

    /// Listens to `rooms` from now on.
    public Live(Rooms rooms, InstantSource clock) {
        this.kept = rooms;
        this.clock = clock;
        rooms.watch(this::changed);
        var _ =
                beat.scheduleWithFixedDelay(
                        () -> this.rooms.values().forEach(LiveRoom::beat),
                        BOARD_BEAT,
                        BOARD_BEAT,
                        TimeUnit.MILLISECONDS);
    }

    private void changed(Change change) {
        RoomState room = change.after();
        LiveRoom live = rooms.get(room.id());
        if (live == null) {
            return;
        }
        boolean forAll = false;
        for (RoomEvent event : change.events()) {
            forAll |= isForAll(event);
            seats(event, room).forEach(live::poke);
        }
        if (forAll) {
            live.seats().say(SseText.round(room, clock.millis()));
        }
        live.changed();
        if (room.closed()) {
            live.beat();
            live.close();
            rooms.remove(room.id());
        }
    }

    private static boolean isForAll(RoomEvent event) {
        return switch (event) {
            case RoomEvent.Started _,
                    RoomEvent.Paused _,
                    RoomEvent.TimeAdded _,
                    RoomEvent.Ended _,
                    RoomEvent.RoundSet _,
                    RoomEvent.Turned _,
                    RoomEvent.Closed _,
                    RoomEvent.Cleared _ ->
                    true;
            case RoomEvent.CodeChanged _,
                    RoomEvent.Locked _,
                    RoomEvent.MarksShown _,
                    RoomEvent.Joined _,
                    RoomEvent.Removed _,
                    RoomEvent.Renamed _,
                    RoomEvent.ExtraTimeGiven _,
                    RoomEvent.WayGiven _,
                    RoomEvent.RowSaid _,
                    RoomEvent.HandsRaised _,
                    RoomEvent.TakeOverAsked _,
                    RoomEvent.TakenOver _,
                    RoomEvent.Answered _,
                    RoomEvent.HandedIn _,
                    RoomEvent.Ran _,
                    RoomEvent.CameLater _,
                    RoomEvent.Passed _,
                    RoomEvent.LetIn _,
                    RoomEvent.LeftOut _,
                    RoomEvent.Forgotten _ ->
                    false;
        };
    }

    /// The seats whose pages have to look again. What a tablet sent itself it knows.
    private static List<Integer> seats(RoomEvent event, RoomState room) {
        return switch (event) {
            case RoomEvent.Removed(int seat) -> List.of(seat);
            case RoomEvent.Renamed(int seat, _) -> List.of(seat);
            case RoomEvent.ExtraTimeGiven(int seat, _) -> List.of(seat);
            case RoomEvent.WayGiven(int seat, _) -> List.of(seat);
            case RoomEvent.TakeOverAsked(int seat, _) -> List.of(seat);
            case RoomEvent.TakenOver(int seat) -> List.of(seat);
            case RoomEvent.LetIn(int seat, _) -> List.of(seat);
            case RoomEvent.RowSaid _ ->
                    room.seats()
                            .present()
                            .filter(seat -> seat.way() == Way.CAPTIONS)
                            .map(Seat::number)
                            .toList();
            case RoomEvent.CodeChanged _,
                    RoomEvent.Locked _,
                    RoomEvent.MarksShown _,
                    RoomEvent.Joined _,
                    RoomEvent.Started _,
                    RoomEvent.Paused _,
                    RoomEvent.TimeAdded _,
                    RoomEvent.Ended _,
                    RoomEvent.RoundSet _,
                    RoomEvent.Answered _,
                    RoomEvent.HandedIn _,
                    RoomEvent.Turned _,
                    RoomEvent.HandsRaised _,
                    RoomEvent.Ran _,
                    RoomEvent.CameLater _,
                    RoomEvent.Passed _,
                    RoomEvent.LeftOut _,
                    RoomEvent.Forgotten _,
                    RoomEvent.Closed _,
                    RoomEvent.Cleared _ ->
                    List.of();
        };
    }

    /// Sends a seat what it has to know until its tablet goes.
    public void sit(String room, int seat, Outlet out) {
        live(room).sit(seat, () -> now(room), out);
    }

    /// Sends a board what it has to know until it goes.
    public void look(String room, Outlet out) {
        live(room).look(out);
    }

    private byte[] now(String room) {
        return kept.find(room)
                .map(state -> SseText.round(state, clock.millis()))
                .orElse(SseText.CLOSED);
    }

    /// Whether the tablet of a seat was here and is gone.
    public boolean isAway(RoomState room, int seat) {
        LiveRoom live = rooms.get(room.id());
        return live != null && live.isAway(seat);
    }

    /// The moment, in milliseconds of the epoch.
    public long now() {
        return clock.millis();
    }

    /// Where the round stands, as JSON for a seat.
    public String round(RoomState room) {
        return SseText.roundJson(room, clock.millis());
    }

    private LiveRoom live(String room) {
        return rooms.computeIfAbsent(room, _ -> new LiveRoom());
    }

    @Override
    public void close() {
        beat.shutdownNow();
        rooms.values().forEach(LiveRoom::close);
    }
}
