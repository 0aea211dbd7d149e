package tamabako.bench.room;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import tamabako.desk.room.Activity;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Round;
import tamabako.desk.room.Setup;
import tamabako.desk.room.journal.Rooms;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.marking.WritingRules;
import tamabako.records.ClassBook;
import tamabako.records.RoomLog;

/// Answers a second that are on the disk when they are acknowledged: the journal with as many seats
/// as are given (500), and one commit an answer in the same embedded store, in turn, three times.
public final class AnswerRate {

    private static final long LONG = 3_000_000_000L;

    private AnswerRate() {}

    /// Prints the rates of each run.
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int seats = arguments.length == 0 ? 500 : Integer.parseInt(arguments[0]);
        for (int run = 1; run <= 3; run++) {
            double one = oneCommitAnAnswer();
            double journal = journal(seats);
            System.out.printf(
                    "run %d: one commit an answer %.0f/s, journal with %d seats %.0f/s, %.1f times;"
                            + " load %s%n",
                    run,
                    one,
                    seats,
                    journal,
                    journal / one,
                    Files.readString(Path.of("/proc/loadavg")).strip());
        }
    }

    private static ClassBook book() throws IOException {
        return ClassBook.open(Files.createTempDirectory("room-rate").resolve("book.sqlite"));
    }

    private static Setup setup() {
        Round round =
                new Round(
                        "Rate",
                        "SHEET",
                        new Activity.Written(
                                List.of(
                                        ProblemJson.parse(
                                                "{\"id\":\"1\",\"kind\":\"column\",\"rows\":[\"1\",\"40\"]}")),
                                WritingRules.EASY),
                        Optional.empty());
        return new Setup("Rate", List.of(round), List.of(), true, true, Setup.MOST_SEATS);
    }

    private static double oneCommitAnAnswer() throws IOException {
        try (ClassBook book = book()) {
            RoomLog log = book.rooms();
            log.open(new RoomLog.Entry("ROOM", "CODE22", "{}", Clock.systemUTC().instant()));
            long count = 0;
            long begin = System.nanoTime();
            while (System.nanoTime() - begin < LONG) {
                long number = ++count;
                String event =
                        "{\"is\":\"answered\",\"seat\":1,\"number\":%d,\"problem\":0,\"written\":\"41\",\"mark\":\"right\",\"took\":1000,\"worked\":1000}"
                                .formatted(number);
                book.whole(() -> log.append("ROOM", new RoomLog.Part(number, event)));
            }
            return 1e9 * count / (System.nanoTime() - begin);
        }
    }

    private static double journal(int seats) throws IOException, InterruptedException {
        Clock clock = Clock.systemUTC();
        try (ClassBook book = book();
                Rooms rooms = new Rooms(book, clock)) {
            RoomState room = rooms.open(setup());
            List<RoomCommand> joins = new ArrayList<>();
            for (int seat = 1; seat <= seats; seat++) {
                joins.add(new RoomCommand.Join("n" + seat, "", "key" + seat, 0));
            }
            rooms.ask(room.id(), joins);
            rooms.ask(room.id(), new RoomCommand.Start(clock.millis()));
            AtomicLong count = new AtomicLong();
            long begin = System.nanoTime();
            List<Thread> pupils = new ArrayList<>();
            for (int seat = 1; seat <= seats; seat++) {
                int who = seat;
                pupils.add(
                        Thread.startVirtualThread(() -> {
                            for (int n = 1; System.nanoTime() - begin < LONG; n++) {
                                rooms.ask(
                                        room.id(),
                                        new RoomCommand.Answer(
                                                who,
                                                "key" + who,
                                                1,
                                                n,
                                                0,
                                                "41",
                                                true,
                                                clock.millis()));
                                count.incrementAndGet();
                            }
                        }));
            }
            for (Thread pupil : pupils) {
                pupil.join();
            }
            return 1e9 * count.get() / (System.nanoTime() - begin);
        }
    }
}
