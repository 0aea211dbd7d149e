package tamabako.bench.room;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.desk.room.Activity;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Round;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Setup;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.room.page.RoomPages;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.marking.WritingRules;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;

/// A process with one room: `RoomServer desk|undertow|javalin FOLDER`. It goes on with the room
/// that the folder holds, and takes the teacher's commands on standard input, one a line: `start`,
/// `pause`, `repeat`, `memory`, `check`.
public final class RoomServer {

    private static final int PROBLEMS = 20;

    private final Rooms rooms;
    private final String room;
    private final Set<String> taken = new HashSet<>();
    private long answers;
    private long twice;

    private RoomServer(Rooms rooms, String room) {
        this.rooms = rooms;
        this.room = room;
        rooms.watch(change -> {
            boolean isForAll = change.events().stream().anyMatch(UndertowFront::isForAll);
            if (isForAll) {
                say("EVENT " + System.nanoTime());
            }
            change.events().forEach(this::count);
        });
    }

    private void count(RoomEvent event) {
        if (event instanceof RoomEvent.Answered answered) {
            answers++;
            if (!taken.add(answered.seat() + "/" + answered.number())) {
                twice++;
            }
        }
    }

    /// Serves until standard input ends.
    public static void main(String[] arguments) throws IOException {
        Clock clock = Clock.systemUTC();
        Path folder = Path.of(arguments[1]);
        Files.createDirectories(folder);
        try (ClassBook book = ClassBook.open(folder.resolve("book.sqlite"));
                Rooms rooms = new Rooms(book, clock)) {
            RoomState state = rooms.all().stream().findFirst().orElseGet(() -> open(book, rooms));
            RoomServer server = new RoomServer(rooms, state.id());
            Live live = new Live(rooms, clock);
            RoomPages pages = new RoomPages(book, rooms, live, clock);
            try (Front front =
                    Front.start(arguments[0], new DeskParts(pages, live), rooms, pages.routes())) {
                say("READY %d %s %s".formatted(front.port(), state.code(), state.id()));
                server.obey(clock);
            }
        }
    }

    private static RoomState open(ClassBook book, Rooms rooms) {
        List<Problem> problems =
                java.util.stream.IntStream.rangeClosed(1, PROBLEMS)
                        .mapToObj(n ->
                                ProblemJson.parse(
                                        "{\"id\":\"%d\",\"kind\":\"column\",\"rows\":[\"%d\",\"40\"]}"
                                                .formatted(n, n)))
                        .toList();
        book.sheets()
                .keep(
                        new KeptSheet(
                                new Sheet("SHEET", "Load", problems),
                                Clock.systemUTC().instant(),
                                false));
        Round round =
                new Round(
                        "Load",
                        "SHEET",
                        new Activity.Written(problems, WritingRules.EASY),
                        Optional.empty());
        return rooms.open(
                new Setup("Load", List.of(round), List.of(), true, true, Setup.MOST_SEATS));
    }

    private void obey(Clock clock) throws IOException {
        BufferedReader in =
                new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            switch (line) {
                case "start" -> rooms.ask(room, new RoomCommand.Start(clock.millis()));
                case "pause" -> rooms.ask(room, new RoomCommand.Pause(clock.millis()));
                case "repeat" -> rooms.ask(room, new RoomCommand.Repeat(clock.millis()));
                case "memory" -> say("MEMORY " + memory());
                case "check" -> check();
                default -> throw new IllegalArgumentException(line);
            }
        }
    }

    /// The memory of the process that is resident after a collection, as the kernel says, and what
    /// of the heap is in use, both in KB.
    private static String memory() throws IOException {
        System.gc();
        System.gc();
        Runtime machine = Runtime.getRuntime();
        long heap = (machine.totalMemory() - machine.freeMemory()) / 1024;
        return resident() + " " + heap;
    }

    private static long resident() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/status")).stream()
                .filter(line -> line.startsWith("VmRSS:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                .findFirst()
                .orElse(-1);
    }

    private void check() {
        RoomState state = rooms.find(room).orElseThrow();
        long messages = state.seats().all().mapToLong(Seat::taken).sum();
        say("CHECK %d %d %d %d".formatted(state.seats().count(), messages, answers, twice));
    }

    private static synchronized void say(String line) {
        System.out.println(line);
        System.out.flush();
    }
}
