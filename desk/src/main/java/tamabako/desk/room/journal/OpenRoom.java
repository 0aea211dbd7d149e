package tamabako.desk.room.journal;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;

/// A room as this program knows it. Only the journal changes it; anyone may look.
final class OpenRoom {

    private final List<Consumer<Change>> watchers = new CopyOnWriteArrayList<>();
    private volatile RoomState state;

    OpenRoom(RoomState state) {
        this.state = state;
    }

    RoomState state() {
        return state;
    }

    /// Lets everybody see the next state, which is kept already.
    void show(RoomState next, List<RoomEvent> events) {
        if (events.isEmpty()) {
            return;
        }
        Change change = new Change(state, next, events);
        state = next;
        watchers.forEach(watcher -> watcher.accept(change));
    }

    void watch(Consumer<Change> watcher) {
        watchers.add(watcher);
    }
}
