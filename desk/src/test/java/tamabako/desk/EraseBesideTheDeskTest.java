package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.room.Decision;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Setup;
import tamabako.desk.room.journal.Rooms;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.Database;
import tamabako.records.Group;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;

/// `classbook erase` while a desk runs over the same class book, with the pupil in an open room.
class EraseBesideTheDeskTest {

    private static final String NAME = "Quillwort";
    private static final Clock CLOCK = Clock.systemUTC();

    @TempDir private Path folder = Path.of("");

    private final StringWriter err = new StringWriter();

    @Test
    void thePupilLeavesTheRoomOfADeskOverTheEmbeddedStore() throws IOException {
        Path file = folder.resolve("classbook.sqlite");
        erased(new Database.Embedded(file), "--data", folder.toString());
        assertThat(bytes()).doesNotContain(NAME, "GONE-ID", "271828182").contains("Stonecrop");
    }

    @Test
    void thePupilLeavesTheRoomOfADeskOverPostgreSql() throws IOException {
        try (BookServer server = new BookServer()) {
            String address = server.make("erasing");
            erased(Database.parse(address, new Database.Password.None()), "--database", address);
        }
    }

    private void erased(Database database, String... place) {
        try (ClassBook book = ClassBook.open(database);
                Rooms desk = new Rooms(book, CLOCK)) {
            String open = lesson(book, desk).id();
            String closed = desk.open(setup()).id();
            work(desk, open);
            work(desk, closed);
            desk.ask(closed, new RoomCommand.Close(CLOCK.millis()));

            int exit =
                    Tamabako.commandLine()
                            .setErr(new PrintWriter(err, true))
                            .execute(
                                    Stream.concat(
                                                    Stream.of("classbook", "erase", NAME, "--yes"),
                                                    Stream.of(place))
                                            .toArray(String[]::new));

            assertThat(exit).as(err.toString()).isZero();
            assertThat(book.pupils().find("GONE-ID")).isEmpty();
            assertThat(book.rooms().naming("GONE-ID")).isEmpty();
            eventually(() -> !desk.find(open).orElseThrow().toString().contains(NAME));
            eventually(() -> !desk.findKept(closed).orElseThrow().toString().contains(NAME));
            RoomState after = desk.find(open).orElseThrow();
            assertThat(after.seats().present().map(Seat::name)).containsExactly("Stonecrop");
            assertThat(answer(desk, open, 1, 2)).isEqualTo(Decision.refuse(Refusal.NOT_YOURS));
            assertThat(answer(desk, open, 2, 2)).isInstanceOf(Decision.Accepted.class);
        }
    }

    private static void eventually(BooleanSupplier isSo) {
        long end = System.nanoTime() + Duration.ofSeconds(10).toNanos();
        while (!isSo.getAsBoolean() && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
        assertThat(isSo.getAsBoolean()).isTrue();
    }

    private static RoomState lesson(ClassBook book, Rooms desk) {
        Group group = Group.of("Tuesday");
        book.groups().keep(group);
        book.pupils().keep(new Pupil("GONE-ID", group.id(), NAME, Locale.ENGLISH, false));
        book.pupils().keep(new Pupil("STAYS-ID", group.id(), "Stonecrop", Locale.ENGLISH, false));
        Sheet sheet = new Sheet("SHEET", "Sheet", Lesson.problems(3));
        book.sheets().keep(new KeptSheet(sheet, CLOCK.instant(), false));
        return desk.open(setup());
    }

    private static Setup setup() {
        return new Setup(
                "Lesson",
                List.of(Lesson.round("SHEET", 3, Optional.empty())),
                List.of(
                        new Expected("GONE-ID", NAME, "en", 0, "", false),
                        new Expected("STAYS-ID", "Stonecrop", "en", 0, "", false)),
                true,
                false,
                9);
    }

    private static void work(Rooms desk, String id) {
        desk.ask(
                id,
                List.of(
                        new RoomCommand.Join(NAME, "GONE-ID", "key1", 0),
                        new RoomCommand.Join("Stonecrop", "STAYS-ID", "key2", 0),
                        new RoomCommand.Start(CLOCK.millis())));
        assertThat(answer(desk, id, 1, 1)).isInstanceOf(Decision.Accepted.class);
        assertThat(answer(desk, id, 2, 1)).isInstanceOf(Decision.Accepted.class);
    }

    private static Decision answer(Rooms desk, String id, int seat, int number) {
        RoomCommand answer =
                new RoomCommand.Answer(
                        seat,
                        "key" + seat,
                        1,
                        number,
                        number - 1,
                        seat == 1 ? "271828182" : "314159265",
                        true,
                        CLOCK.millis());
        return desk.ask(id, answer).orElseThrow().decision();
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
