package tamabako.desk.room.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.room.Later;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;
import tamabako.records.Work;

/// Late answers that nobody let in are there after the room was closed, and after the program was
/// killed (kill -9) with them.
class LateKillTest {

    @TempDir private Path folder = Path.of("");

    /// A program that closes a room with late answers, takes one more, says so, and waits to be
    /// killed.
    static final class Killed {

        private Killed() {}

        public static void main(String[] arguments) throws InterruptedException {
            Clock clock = Clock.systemUTC();
            ClassBook book = ClassBook.open(Path.of(arguments[0]));
            Sheet sheet = new Sheet("SHEET", "Sheet", Lesson.problems(3));
            book.sheets().keep(new KeptSheet(sheet, clock.instant(), false));
            Rooms rooms = new Rooms(book, clock);
            String id =
                    rooms.open(Lesson.setup(9, Lesson.round("SHEET", 3, Optional.empty()))).id();
            long now = clock.millis();
            rooms.ask(
                    id,
                    List.of(
                            new RoomCommand.Join("Aoi", "", "key1", 0),
                            new RoomCommand.Start(now),
                            answer(1, 0, "46", now),
                            new RoomCommand.End(now),
                            answer(2, 1, "47", now + 60_000),
                            new RoomCommand.Close(now + 61_000),
                            answer(3, 2, "48", now + 90_000)));
            System.out.println("kept " + id);
            Thread.sleep(60_000);
        }
    }

    private static RoomCommand.Answer answer(int number, int problem, String written, long at) {
        return new RoomCommand.Answer(1, "key1", 1, number, problem, written, false, at);
    }

    @Test
    void lateAnswersOutliveTheRoomAndTheProgram() throws IOException, InterruptedException {
        String id = runAndKill();
        try (ClassBook book = ClassBook.open(folder.resolve("book.sqlite"));
                Rooms rooms = new Rooms(book, Clock.systemUTC())) {
            assertThat(rooms.all()).isEmpty();
            RoomState waiting = rooms.waiting().getFirst();
            assertThat(waiting.id()).isEqualTo(id);
            Seat seat = waiting.seats().find(1).orElseThrow();
            assertThat(seat.later()).extracting(Later::written).containsExactly("47", "48");
            Work before = book.work().latest(9).getFirst();
            assertThat(before.right()).isEqualTo(1);

            rooms.ask(id, answer(3, 2, "48", Clock.systemUTC().millis()));
            rooms.ask(id, new RoomCommand.AdmitLate(1));
            rooms.ask(id, new RoomCommand.AdmitLate(1));
            assertThat(book.work().latest(9))
                    .singleElement()
                    .satisfies(work -> assertThat(work.right()).isEqualTo(3));
            assertThat(rooms.waiting()).isEmpty();
        }
    }

    private String runAndKill() throws IOException, InterruptedException {
        Process program =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                Killed.class.getName(),
                                folder.resolve("book.sqlite").toString())
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        try (BufferedReader said = program.inputReader(StandardCharsets.UTF_8)) {
            String line = said.readLine();
            while (line != null && !line.startsWith("kept ")) {
                line = said.readLine();
            }
            assertThat(line).isNotNull();
            return line.substring("kept ".length());
        } finally {
            program.destroyForcibly().waitFor();
        }
    }
}
