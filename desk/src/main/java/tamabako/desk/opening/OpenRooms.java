package tamabako.desk.opening;

import java.time.Clock;
import tamabako.desk.book.PupilTraces;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.room.page.RoomPages;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;

/// The rooms of a desk that is open, and whoever looks at them.
final class OpenRooms implements AutoCloseable {

    private final ClassBook book;
    private final Clock clock = Clock.systemUTC();
    private final Rooms rooms;
    private final Live live;

    OpenRooms(ClassBook book) {
        this.book = book;
        this.rooms = new Rooms(book, clock);
        this.live = new Live(rooms, clock);
    }

    Routes pages() {
        return new RoomPages(book, rooms, live, clock);
    }

    /// Where a pupil who is erased may have sat.
    PupilTraces traces() {
        return rooms;
    }

    /// Ends the streams, which the server would wait for.
    void letGo() {
        live.close();
    }

    @Override
    public void close() {
        rooms.close();
    }
}
