package tamabako.desk.room.page;

import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Round;
import tamabako.desk.room.Turn.Move;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.DeskServer;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;

/// A desk with one open room, whose caller nobody knows: only the pages of pupils are open.
final class PupilsDesk implements AutoCloseable {

    private final Clock clock = Clock.systemUTC();
    private final ClassBook book;
    private final Rooms rooms;
    private final Live live;
    private final DeskServer server;
    final String room;

    PupilsDesk(Path folder, Round round) {
        book = ClassBook.open(folder.resolve("book.sqlite"));
        Sheet sheet = new Sheet("SHEET", "Sheet", Lesson.problems(3));
        book.sheets().keep(new KeptSheet(sheet, clock.instant(), false));
        rooms = new Rooms(book, clock);
        live = new Live(rooms, clock);
        server =
                DeskServer.start(
                        InetAddress.getLoopbackAddress(),
                        0,
                        List.of(new RoomPages(book, rooms, live, clock)),
                        RoomRefusalsTest.STRANGERS);
        room = rooms.open(Lesson.setup(9, round)).id();
    }

    RoomState state() {
        return rooms.find(room).orElseThrow();
    }

    Tablet sit(String name) {
        Tablet tablet = new Tablet(server.url());
        tablet.post("/join/" + state().code(), "alias", name);
        return tablet;
    }

    void ask(RoomCommand command) {
        rooms.ask(room, command);
    }

    void move(Move move, int problem) {
        ask(new RoomCommand.TakeTurn(move, problem, clock.millis()));
    }

    @Override
    public void close() {
        live.close();
        server.close();
        rooms.close();
        book.close();
    }
}
