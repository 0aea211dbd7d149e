package tamabako.desk.room.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.room.Decision;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;

class RoomsTest {

    @TempDir private Path folder = Path.of("");

    private final Clock clock = Clock.systemUTC();
    private Path file = folder;

    @BeforeEach
    void place() {
        file = folder.resolve("book.sqlite");
    }

    private ClassBook book() {
        ClassBook book = ClassBook.open(file);
        if (book.sheets().find("SHEET").isEmpty()) {
            Sheet sheet = new Sheet("SHEET", "Sheet", Lesson.problems(3));
            book.sheets().keep(new KeptSheet(sheet, clock.instant(), false));
        }
        return book;
    }

    private static RoomState lesson(Rooms rooms, Optional<Duration> limit) {
        return rooms.open(Lesson.setup(5_000, Lesson.round("SHEET", 3, limit)));
    }

    private static RoomCommand.Answer answer(RoomState room, int seat, int number, String written) {
        return new RoomCommand.Answer(
                seat,
                "key" + seat,
                room.run(),
                number,
                number - 1,
                written,
                true,
                System.currentTimeMillis());
    }

    @Test
    void aRoomIsThereAgainAfterTheProgramStopped() {
        RoomState before;
        try (ClassBook book = book();
                Rooms rooms = new Rooms(book, clock)) {
            String id = lesson(rooms, Optional.empty()).id();
            rooms.ask(id, new RoomCommand.Join("葵", "", "key1", 20));
            rooms.ask(id, new RoomCommand.Start(clock.millis()));
            rooms.ask(id, new RoomCommand.NewCode("NEW234"));
            before =
                    rooms.ask(id, answer(rooms.find(id).orElseThrow(), 1, 1, "46"))
                            .orElseThrow()
                            .room();
        }
        try (ClassBook book = book();
                Rooms rooms = new Rooms(book, clock)) {
            assertThat(rooms.find(before.id())).contains(before);
            assertThat(rooms.findByCode("NEW234")).contains(before);
            Outcome next = rooms.ask(before.id(), answer(before, 1, 2, "47")).orElseThrow();
            assertThat(next.room().seats().find(1).orElseThrow().right()).isEqualTo(2);
        }
    }

    @Test
    void whatIsToldWasKeptBefore() {
        try (ClassBook book = book();
                Rooms rooms = new Rooms(book, clock)) {
            RoomState room = lesson(rooms, Optional.empty());
            for (int seat = 1; seat <= 20; seat++) {
                Outcome outcome =
                        rooms.ask(room.id(), new RoomCommand.Join("n" + seat, "", "key", 0))
                                .orElseThrow();
                List<RoomEvent> kept =
                        book.rooms().after(room.id(), 0).stream()
                                .flatMap(part -> EventLines.read(part.events()).stream())
                                .toList();
                assertThat(kept).hasSize((int) outcome.room().events()).hasSize(seat);
            }
        }
    }

    @Test
    void answersThatComeTogetherShareACommit() throws InterruptedException {
        try (ClassBook book = book();
                Rooms rooms = new Rooms(book, clock)) {
            RoomState room = lesson(rooms, Optional.empty());
            int seats = 300;
            List<RoomCommand> joins = new ArrayList<>();
            for (int seat = 1; seat <= seats; seat++) {
                joins.add(new RoomCommand.Join("n" + seat, "", "key" + seat, 0));
            }
            rooms.ask(room.id(), joins);
            RoomState running =
                    rooms.ask(room.id(), new RoomCommand.Start(clock.millis()))
                            .orElseThrow()
                            .room();
            int before = book.rooms().after(room.id(), 0).size();
            var refused = new ConcurrentLinkedQueue<Outcome>();
            List<Thread> pupils = new ArrayList<>();
            for (int seat = 1; seat <= seats; seat++) {
                int number = seat;
                pupils.add(
                        Thread.startVirtualThread(() -> {
                            Outcome outcome =
                                    rooms.ask(room.id(), answer(running, number, 1, "46"))
                                            .orElseThrow();
                            if (outcome.decision() instanceof Decision.Refused) {
                                refused.add(outcome);
                            }
                        }));
            }
            for (Thread pupil : pupils) {
                pupil.join();
            }
            assertThat(refused).isEmpty();
            RoomState after = rooms.find(room.id()).orElseThrow();
            assertThat(after.seats().present().mapToLong(Seat::right).sum()).isEqualTo(seats);
            int commits = book.rooms().after(room.id(), 0).size() - before;
            assertThat(commits).isBetween(1, seats / 5);
        }
    }

    @Test
    void theWorkIsInTheClassBookAsSoonAsTheRoundEnds() {
        try (ClassBook book = book();
                Rooms rooms = new Rooms(book, clock)) {
            Group group = Group.of("Tuesday");
            book.groups().keep(group);
            Pupil pupil = new Pupil("PUPIL", group.id(), "葵", Locale.JAPANESE, false);
            book.pupils().keep(pupil);
            RoomState room = lesson(rooms, Optional.empty());
            rooms.ask(room.id(), new RoomCommand.Join("葵", "PUPIL", "key1", 0));
            rooms.ask(room.id(), new RoomCommand.Join("Guest", "", "key2", 0));
            rooms.ask(room.id(), new RoomCommand.Join("Idle", "", "key3", 0));
            rooms.ask(room.id(), new RoomCommand.Start(clock.millis()));
            rooms.ask(room.id(), answer(room, 1, 1, "46"));
            rooms.ask(room.id(), answer(room, 1, 2, "9"));
            rooms.ask(room.id(), answer(room, 2, 1, "46"));
            rooms.ask(room.id(), new RoomCommand.End(clock.millis()));
            Work work = book.work().of("PUPIL").getFirst();
            assertThat(work.sheetId()).isEqualTo("SHEET");
            assertThat(work.answers())
                    .extracting(Work.MarkedAnswer::mark)
                    .containsExactly("right", "wrong", "empty");
            assertThat(work.answers().getFirst().took()).isPresent();
            assertThat(book.work().latest(10)).hasSize(2);

            rooms.ask(room.id(), answer(room, 1, 3, "48"));
            assertThat(book.work().of("PUPIL"))
                    .singleElement()
                    .satisfies(again -> assertThat(again.right()).isEqualTo(2));

            rooms.ask(room.id(), new RoomCommand.Close(clock.millis()));
            assertThat(rooms.find(room.id())).isEmpty();
            assertThat(rooms.all()).isEmpty();
            assertThat(rooms.waiting()).isEmpty();
            assertThat(book.work().latest(10)).hasSize(2);
            rooms.ask(
                    room.id(),
                    new RoomCommand.ClearAway(clock.millis() + Duration.ofHours(37).toMillis()));
            assertThat(book.rooms().all()).isEmpty();
        }
    }

    @Test
    void aRoundEndsByItselfWhenItsTimeIsUp() throws InterruptedException {
        try (ClassBook book = book();
                Rooms rooms = new Rooms(book, clock)) {
            RoomState room = lesson(rooms, Optional.of(Duration.ofMillis(50)));
            var ended = new java.util.concurrent.CountDownLatch(1);
            rooms.watch(change -> {
                if (change.events().stream().anyMatch(RoomEvent.Ended.class::isInstance)) {
                    ended.countDown();
                }
            });
            rooms.ask(room.id(), new RoomCommand.Start(clock.millis() - 3_000));
            assertThat(ended.await(5, java.util.concurrent.TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test
    void whatIsAskedOfARoomThatIsGoneIsRefused() {
        try (ClassBook book = book();
                Rooms rooms = new Rooms(book, clock)) {
            assertThat(rooms.ask("NOWHERE", new RoomCommand.Start(0))).isEmpty();
            RoomState room = lesson(rooms, Optional.empty());
            book.rooms().close(room.id());
            assertThat(rooms.ask(room.id(), new RoomCommand.Start(0)).orElseThrow().decision())
                    .isEqualTo(Decision.refuse(Refusal.CLOSED));
            assertThat(rooms.find(room.id())).isEmpty();
        }
    }
}
