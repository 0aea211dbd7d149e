package tamabako.desk.room.live;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import tamabako.desk.web.Outlet;

/// Whoever looks at one room through this program.
final class LiveRoom {

    private final Broadcast seats = new Broadcast();
    private final Broadcast boards = new Broadcast();
    private final Map<Integer, Broadcast.Listener> bySeat = new ConcurrentHashMap<>();
    private final Map<Integer, Boolean> seen = new ConcurrentHashMap<>();
    private final AtomicBoolean news = new AtomicBoolean();

    Broadcast seats() {
        return seats;
    }

    void sit(int seat, Supplier<byte[]> first, Outlet out) {
        Broadcast.Listener listener = seats.join(out, left -> leave(seat, left));
        seen.put(seat, true);
        Broadcast.Listener before = bySeat.put(seat, listener);
        if (before != null) {
            before.replace();
        }
        news.set(true);
        try {
            listener.begin(first.get());
        } catch (RuntimeException failed) {
            listener.gone();
            throw failed;
        }
    }

    private void leave(int seat, Broadcast.Listener listener) {
        bySeat.remove(seat, listener);
        news.set(true);
    }

    void look(Outlet out) {
        boards.join(out, _ -> {}).begin(SseText.LOOK);
    }

    void poke(int seat) {
        Broadcast.Listener listener = bySeat.get(seat);
        if (listener != null) {
            listener.poke();
        }
    }

    /// Something changed that boards show. They hear of it with the next beat.
    void changed() {
        news.set(true);
    }

    /// Tells the boards, if there is anything new, and keeps everybody awake.
    void beat() {
        if (news.getAndSet(false)) {
            boards.say(SseText.LOOK);
        }
        seats.beat();
        boards.beat();
    }

    /// Whether the tablet of a seat was here and is gone.
    boolean isAway(int seat) {
        return seen.containsKey(seat) && !bySeat.containsKey(seat);
    }

    void close() {
        seats.close();
        boards.close();
    }
}
