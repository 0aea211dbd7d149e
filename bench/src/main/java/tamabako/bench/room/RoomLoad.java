package tamabako.bench.room;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/// The same rounds on the desk, on Undertow and on Javalin, one after another in one run: `RoomLoad
/// [SEATS...] [SERVERS...]`, 1,000 and 5,000 seats and all three where nothing is said. All virtual
/// machines have the options with which the desk is started, but for a server named with `-plain`
/// behind it, such as `javalin-plain`, which has none that spares memory.
///
/// Each seat listens on one connection and sends on another. In each round the teacher starts; the
/// seats answer twice within 4 s; half-way the teacher pauses and goes on; then the round is
/// repeated. Fan-out is the time from an event being on the disk to a seat having read it. The
/// memory is that of the server's process after a collection, before the first seat and with every
/// seat there.
public final class RoomLoad {

    private static final List<String> SERVERS = List.of("desk", "undertow", "javalin");

    private static final int EVENTS_A_ROUND = 4;

    private static final int ANSWERS = 2;

    private static final long SPREAD = 4_000_000_000L;

    private RoomLoad() {}

    /// Runs all of them and prints a table.
    public static void main(String[] arguments) throws IOException {
        List<Integer> sizes =
                Arrays.stream(arguments)
                        .filter(word -> word.matches("\\d+"))
                        .map(Integer::valueOf)
                        .toList();
        List<String> servers =
                Arrays.stream(arguments).filter(word -> word.matches("[a-z-]+")).toList();
        System.out.println(LoadRow.HEAD);
        List<String> ratios = new ArrayList<>();
        for (int seats : sizes.isEmpty() ? List.of(1_000, 5_000) : sizes) {
            List<LoadRow> rows = new ArrayList<>();
            for (String server : servers.isEmpty() ? SERVERS : servers) {
                LoadRow row = run(server, seats, seats > 2_000 ? 3 : 5);
                System.out.println(row);
                rows.add(row);
            }
            rows.stream().skip(1).forEach(row -> ratios.add(rows.getFirst().beside(row)));
        }
        ratios.forEach(System.out::println);
    }

    private static LoadRow run(String name, int seats, int rounds) throws IOException {
        Path folder = Files.createTempDirectory("room-load");
        int events = EVENTS_A_ROUND * rounds;
        try (ServerProcess server = new ServerProcess(name, folder)) {
            server.tell("memory");
            long empty = Long.parseLong(server.await("MEMORY").split(" ", -1)[1]) / 1024;
            try (Seating seating = new Seating(server, seats, events)) {
                return run(name, seats, rounds, server, seating, empty);
            }
        }
    }

    private static LoadRow run(
            String name, int seats, int rounds, ServerProcess server, Seating seating, long empty)
            throws IOException {
        int events = EVENTS_A_ROUND * rounds;
        int event = 0;
        for (int round = 0; round < rounds; round++) {
            server.tell("start");
            seating.awaitEvent(event++);
            seating.answer(
                    round + 1,
                    ANSWERS,
                    SPREAD,
                    () -> {
                        server.tell("pause");
                        server.tell("start");
                    });
            event += 2;
            seating.awaitEvent(event - 1);
            server.tell("repeat");
            seating.awaitEvent(event++);
        }
        server.tell("memory");
        String[] memory = server.await("MEMORY").split(" ", -1);
        server.tell("check");
        String[] check = server.await("CHECK").split(" ", -1);
        long[] fanOut = fanOut(server.events(), seating, events);
        long[] answers = seating.answerTimes.stream().mapToLong(Long::longValue).toArray();
        Arrays.sort(answers);
        return new LoadRow(
                name,
                seats,
                times(fanOut),
                times(answers),
                empty,
                Long.parseLong(memory[1]) / 1024,
                Long.parseLong(memory[2]) / 1024,
                String.format(
                        Locale.ROOT,
                        "%,d, %,d, %,d, %s",
                        seating.sent(),
                        seating.acknowledged,
                        Long.parseLong(check[3]),
                        check[4]),
                Files.readString(Path.of("/proc/loadavg")).split(" ", 2)[0]);
    }

    private static LoadRow.Times times(long[] sorted) {
        return new LoadRow.Times(at(sorted, 0.5), at(sorted, 0.99));
    }

    private static long[] fanOut(List<Long> kept, Seating seating, int events) {
        if (kept.size() != events) {
            throw new IllegalStateException(
                    "%d events were kept, not %d.".formatted(kept.size(), events));
        }
        return Arrays.stream(seating.heard)
                .flatMapToLong(times ->
                        java.util.stream.IntStream.range(0, events)
                                .mapToLong(i -> times[i] - kept.get(i)))
                .sorted()
                .toArray();
    }

    private static double at(long[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1.0, share * sorted.length)] / 1e6;
    }
}
