package tamabako.desk.room.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import tamabako.desk.TestFolder;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Round;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Setup;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.Access;
import tamabako.desk.web.Caller;
import tamabako.desk.web.DeskServer;
import tamabako.desk.web.Door;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Verb;
import tamabako.desk.web.Who;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;

/// A desk with the pages of rooms alone, at which everybody is a stranger, with a sheet of three
/// problems and a clock that goes on when it is told to.
final class RoomDesk implements BeforeEachCallback, AfterEachCallback {

    /// Everybody who comes is a stranger.
    private static final Door STRANGERS =
            new Door() {
                @Override
                public Who who(Caller caller) {
                    return new Who.Nobody();
                }

                @Override
                public Optional<Reply> turnAway(Who who, Access access, Verb verb, String here) {
                    return who.may(access)
                            ? Optional.empty()
                            : Optional.of(Reply.trouble(403, "origin"));
                }
            };

    private volatile Instant now = Instant.parse("2026-04-14T07:00:00Z");
    private TestFolder folder;
    private Parts parts;

    private record Parts(ClassBook book, Rooms rooms, Live live, DeskServer server) {}

    @SuppressWarnings("NullAway") // there before the test
    RoomDesk() {}

    @Override
    public void beforeEach(ExtensionContext context) {
        folder = new TestFolder();
        open();
    }

    @Override
    public void afterEach(ExtensionContext context) {
        close();
        folder.close();
    }

    private void open() {
        ClassBook book = ClassBook.open(folder.path().resolve("book.sqlite"));
        if (book.sheets().find("SHEET").isEmpty()) {
            Sheet sheet = new Sheet("SHEET", "Sheet", Lesson.problems(3));
            book.sheets().keep(new KeptSheet(sheet, now, false));
        }
        InstantSource clock = () -> now;
        Rooms rooms = new Rooms(book, clock);
        Live live = new Live(rooms, clock);
        DeskServer server =
                DeskServer.start(
                        InetAddress.getLoopbackAddress(),
                        0,
                        List.of(new RoomPages(book, rooms, live, clock)),
                        STRANGERS);
        parts = new Parts(book, rooms, live, server);
    }

    private void close() {
        parts.live().close();
        parts.server().close();
        parts.rooms().close();
        parts.book().close();
    }

    /// As if the program had been stopped and started again.
    void stopAndStart() {
        close();
        open();
    }

    ClassBook book() {
        return parts.book();
    }

    Rooms rooms() {
        return parts.rooms();
    }

    long millis() {
        return now.toEpochMilli();
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    /// A room of one round for that pupil, for guests too, with at most so many seats.
    RoomState room(Round round, Expected pupil, int most) {
        return rooms().open(new Setup("Lesson", List.of(round), List.of(pupil), true, true, most));
    }

    void ask(RoomState room, RoomCommand command) {
        rooms().ask(room.id(), command);
    }

    /// The room as it is now.
    RoomState state(RoomState room) {
        return rooms().find(room.id()).orElseThrow();
    }

    /// A seat as it is now.
    Seat seat(RoomState room, int number) {
        return state(room).seats().find(number).orElseThrow();
    }

    Tablet tablet() {
        return new Tablet(parts.server().url());
    }

    /// A tablet at which a guest of that name sat down.
    Tablet sit(RoomState room, String name) {
        Tablet tablet = tablet();
        assertThat(tablet.post("/join/" + room.code(), "alias", name).statusCode()).isEqualTo(303);
        assertThat(tablet.get(tablet.seat).statusCode()).isEqualTo(200);
        return tablet;
    }
}
