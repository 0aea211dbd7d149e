package tamabako.desk.room.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Setup;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;

/// A pupil who is erased while a room is open leaves the room too: its memory and its rows.
class ErasedPupilTest {

    private static final String NAME = "Quillwort";
    private static final String ANSWER = "271828182";
    private static final String OTHERS_ANSWER = "314159265";

    @TempDir private Path folder = Path.of("");

    private final Clock clock = Clock.systemUTC();

    private static RoomCommand.Answer answer(int seat, int run, int number, String written) {
        return new RoomCommand.Answer(
                seat, "key" + seat, run, number, number - 1, written, true, 5_000);
    }

    private RoomState lesson(ClassBook book, Rooms rooms) {
        Group group = Group.of("Tuesday");
        book.groups().keep(group);
        book.pupils().keep(new Pupil("GONE-ID", group.id(), NAME, Locale.ENGLISH, false));
        book.pupils().keep(new Pupil("STAYS-ID", group.id(), "Stonecrop", Locale.ENGLISH, false));
        Sheet sheet = new Sheet("SHEET", "Sheet", Lesson.problems(3));
        book.sheets().keep(new KeptSheet(sheet, clock.instant(), false));
        return rooms.open(
                new Setup(
                        "Lesson",
                        List.of(Lesson.round("SHEET", 3, Optional.empty())),
                        List.of(
                                new Expected("GONE-ID", NAME, "en", 0, "4711", false),
                                new Expected("STAYS-ID", "Stonecrop", "en", 0, "0815", false)),
                        true,
                        false,
                        9));
    }

    private static void work(Rooms rooms, String id) {
        rooms.ask(
                id,
                List.of(
                        new RoomCommand.Join(NAME, "GONE-ID", "key1", 10),
                        new RoomCommand.Join("Stonecrop", "STAYS-ID", "key2", 0),
                        new RoomCommand.Rename(1, NAME + " two"),
                        new RoomCommand.AskTakeOver(1, "other-key"),
                        new RoomCommand.Start(0),
                        answer(1, 1, 1, ANSWER),
                        answer(2, 1, 1, OTHERS_ANSWER),
                        new RoomCommand.Repeat(6_000),
                        new RoomCommand.Start(7_000),
                        answer(1, 1, 2, ANSWER + "1"),
                        answer(1, 2, 3, ANSWER + "2")));
    }

    @Test
    void noByteOfAnErasedPupilIsLeftOfAnOpenRoom() throws IOException {
        RoomState after;
        try (ClassBook book = ClassBook.open(folder.resolve("book.sqlite"));
                Rooms rooms = new Rooms(book, clock)) {
            String id = lesson(book, rooms).id();
            work(rooms, id);
            assertThat(bytes()).contains(NAME, "GONE-ID", ANSWER, "4711", "other-key");

            rooms.erase("GONE-ID");
            rooms.erase("GONE-ID");
            book.pupils().erase("GONE-ID");

            assertThat(bytes())
                    .doesNotContain(NAME, "GONE-ID", ANSWER, "4711", "other-key")
                    .contains("Stonecrop", "STAYS-ID", OTHERS_ANSWER, "0815");
            after = rooms.find(id).orElseThrow();
            assertThat(after.toString()).doesNotContain(NAME, "GONE-ID", ANSWER, "4711");
            assertThat(after.seats().present().map(Seat::name)).containsExactly("Stonecrop");
            long forgotten =
                    book.rooms().after(id, 0).stream()
                            .flatMap(part -> EventLines.read(part.events()).stream())
                            .filter(RoomEvent.Forgotten.class::isInstance)
                            .count();
            assertThat(forgotten).isEqualTo(1);
        }
        try (ClassBook book = ClassBook.open(folder.resolve("book.sqlite"));
                Rooms rooms = new Rooms(book, clock)) {
            assertThat(rooms.find(after.id())).contains(after);
            Seat stays =
                    rooms.ask(after.id(), answer(2, 2, 2, "47"))
                            .orElseThrow()
                            .room()
                            .seats()
                            .find(2)
                            .orElseThrow();
            assertThat(stays.right()).isEqualTo(1);
        }
    }

    private String bytes() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                all.append(Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }
}
