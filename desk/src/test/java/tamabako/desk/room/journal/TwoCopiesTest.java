package tamabako.desk.room.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import tamabako.desk.BookServer;
import tamabako.desk.room.Decision;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.Phase;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;

/// Two programs over one PostgreSQL, with seats at both.
@TestInstance(Lifecycle.PER_CLASS)
class TwoCopiesTest {

    private static final Clock CLOCK = Clock.systemUTC();

    private final BookServer server = new BookServer();
    private final ClassBook oneBook = ClassBook.open(server.database());
    private final ClassBook otherBook = ClassBook.open(server.database());
    private final Rooms one = new Rooms(oneBook, CLOCK);
    private final Rooms other = new Rooms(otherBook, CLOCK);

    @BeforeAll
    void sheet() {
        Sheet sheet = new Sheet("SHEET", "Sheet", Lesson.problems(3));
        oneBook.sheets().keep(new KeptSheet(sheet, CLOCK.instant(), false));
    }

    @AfterAll
    void stop() throws Exception {
        one.close();
        other.close();
        oneBook.close();
        otherBook.close();
        server.close();
    }

    private RoomState lesson() {
        return one.open(
                Lesson.setup(500, Lesson.round("SHEET", 3, Optional.of(Duration.ofMinutes(5)))));
    }

    private static void eventually(Rooms rooms, String id, RoomState wanted)
            throws InterruptedException {
        long end = System.nanoTime() + Duration.ofSeconds(5).toNanos();
        while (!rooms.find(id).equals(Optional.of(wanted)) && System.nanoTime() < end) {
            Thread.sleep(5);
        }
        assertThat(rooms.find(id)).contains(wanted);
    }

    @Test
    void whatHappensAtOneIsSeenAtTheOther() throws InterruptedException {
        RoomState room = lesson();
        assertThat(other.findByCode(room.code())).contains(room);
        RoomState joined =
                other.ask(room.id(), new RoomCommand.Join("葵", "", "key1", 0)).orElseThrow().room();
        eventually(one, room.id(), joined);
        RoomState begun =
                one.ask(room.id(), new RoomCommand.Start(CLOCK.millis())).orElseThrow().room();
        eventually(other, room.id(), begun);
        assertThat(other.find(room.id()).orElseThrow().phase()).isInstanceOf(Phase.Running.class);
        one.ask(room.id(), new RoomCommand.Close(CLOCK.millis()));
        long end = System.nanoTime() + Duration.ofSeconds(5).toNanos();
        while (other.find(room.id()).isPresent() && System.nanoTime() < end) {
            Thread.sleep(5);
        }
        assertThat(other.find(room.id())).isEmpty();
    }

    @Test
    void aPupilWhoIsErasedAtOneIsForgottenAtTheOther() throws InterruptedException {
        RoomState room = lesson();
        RoomState joined =
                one.ask(room.id(), new RoomCommand.Join("葵", "AOI", "key1", 0))
                        .orElseThrow()
                        .room();
        eventually(other, room.id(), joined);
        other.erase("AOI");
        RoomState after = other.find(room.id()).orElseThrow();
        eventually(one, room.id(), after);
        assertThat(after.seats().present()).isEmpty();
        assertThat(after.toString()).doesNotContain("葵", "AOI", "key1");
        assertThat(oneBook.rooms().after(room.id(), 0).toString())
                .doesNotContain("葵", "AOI", "key1");
        one.ask(room.id(), new RoomCommand.Close(CLOCK.millis()));
    }

    @Test
    void seatsAtBothGiveTheirAnswersAtOnceAndNothingIsLostOrTakenTwice()
            throws InterruptedException {
        RoomState room = lesson();
        int seats = 60;
        List<RoomCommand> joins = new ArrayList<>();
        for (int seat = 1; seat <= seats; seat++) {
            joins.add(new RoomCommand.Join("n" + seat, "", "key" + seat, 0));
        }
        one.ask(room.id(), joins);
        one.ask(room.id(), new RoomCommand.Start(CLOCK.millis()));
        var refused = new ConcurrentLinkedQueue<Decision>();
        List<Thread> pupils = new ArrayList<>();
        for (int seat = 1; seat <= seats; seat++) {
            int number = seat;
            pupils.add(Thread.startVirtualThread(() -> work(room, number, refused)));
        }
        for (Thread pupil : pupils) {
            pupil.join();
        }
        assertThat(refused).isEmpty();
        RoomState after =
                one.ask(room.id(), new RoomCommand.End(CLOCK.millis())).orElseThrow().room();
        assertThat(after.seats().present()).hasSize(seats).allMatch(Seat::handedIn);
        assertThat(after.seats().present().mapToLong(Seat::right).sum()).isEqualTo(3L * seats);
        eventually(other, room.id(), after);
        assertThat(
                        otherBook.work().latest(500).stream()
                                .filter(work -> work.id().startsWith(room.id())))
                .hasSize(seats)
                .allSatisfy(work -> assertThat(work.right()).isEqualTo(3));
    }

    /// Each message is sent to one program and once more to the other, as a tablet does that is not
    /// sure.
    private void work(RoomState room, int seat, ConcurrentLinkedQueue<Decision> refused) {
        for (int number = 1; number <= 4; number++) {
            long at = CLOCK.millis();
            String key = "key" + seat;
            RoomCommand message =
                    number == 4
                            ? new RoomCommand.HandIn(seat, key, 1, number, at)
                            : new RoomCommand.Answer(
                                    seat,
                                    key,
                                    1,
                                    number,
                                    number - 1,
                                    Lesson.right(number - 1),
                                    true,
                                    at);
            Rooms first = (seat + number) % 2 == 0 ? one : other;
            Rooms second = first == one ? other : one;
            for (Rooms rooms : List.of(first, second)) {
                Decision decision = rooms.ask(room.id(), message).orElseThrow().decision();
                if (decision instanceof Decision.Refused) {
                    refused.add(decision);
                }
            }
        }
    }
}
