package tamabako.bench.room;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// So many seats, driven by one thread: each has one connection that listens and one that sends.
final class Seating implements AutoCloseable {

    private static final Pattern COOKIE = Pattern.compile("(?i)set-cookie: *(seat=[^;]+)");

    /// Stands before the number of the last message that was taken.
    private static final String TAKEN = "\"taken\":";

    /// Follows that number where nothing was refused.
    private static final String NONE_REFUSED = ",\"refused\":\"\"";

    private final Selector selector = Selector.open();
    private final byte[] buffer = new byte[64 * 1024];
    private final InetSocketAddress server;
    private final String room;
    private final List<Wire> senders = new ArrayList<>();
    private final List<String> cookies = new ArrayList<>();
    private final int[] sent;
    final long[][] heard;
    final List<Long> answerTimes = new ArrayList<>();
    private final int[] heardBy;
    private Optional<IOException> broken = Optional.empty();
    private int greeted;
    private int seated;
    long acknowledged;
    long refused;

    Seating(ServerProcess process, int seats, int events) throws IOException {
        this.server = new InetSocketAddress(InetAddress.getLoopbackAddress(), process.port);
        this.room = process.room;
        this.sent = new int[seats];
        this.heard = new long[seats][events];
        this.heardBy = new int[events];
        for (int seat = 0; seat < seats; seat++) {
            join(seat, process.code);
        }
        awaitAll(seats);
        for (int seat = 0; seat < seats; seat++) {
            listen(seat);
            if (seat % 100 == 99) {
                turn(1);
            }
        }
        awaitStreams();
    }

    private void join(int seat, String code) throws IOException {
        Wire wire = new Wire(connect(), seat, false);
        wire.register(selector);
        senders.add(wire);
        cookies.add("");
        String form = "alias=pupil" + seat;
        wire.send(post("/join/" + code, "", form));
        if (seat % 50 == 49) {
            turn(1);
        }
    }

    private SocketChannel connect() throws IOException {
        SocketChannel channel = SocketChannel.open(server);
        channel.configureBlocking(false);
        return channel;
    }

    private static String post(String path, String cookie, String form) {
        return "POST "
                + path
                + " HTTP/1.1\r\nHost: localhost\r\n"
                + (cookie.isEmpty() ? "" : "Cookie: " + cookie + "\r\n")
                + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: "
                + form.length()
                + "\r\n\r\n"
                + form;
    }

    private void awaitAll(int seats) throws IOException {
        long end = System.nanoTime() + 120_000_000_000L;
        while (seated < seats) {
            turn(20);
            if (System.nanoTime() > end) {
                throw new IllegalStateException("Not every seat was taken.");
            }
        }
    }

    private void listen(int seat) throws IOException {
        Wire stream = new Wire(connect(), seat, true);
        stream.register(selector);
        stream.send(
                "GET /seat/"
                        + room
                        + "/stream HTTP/1.1\r\nHost: localhost\r\nAccept:"
                        + " text/event-stream\r\nCookie: "
                        + cookies.get(seat)
                        + "\r\n\r\n");
    }

    private void awaitStreams() throws IOException {
        long end = System.nanoTime() + 120_000_000_000L;
        while (greeted < sent.length) {
            turn(20);
            if (System.nanoTime() > end) {
                throw new IllegalStateException("Only %d streams came.".formatted(greeted));
            }
        }
    }

    /// Waits until every seat heard the event of that number, from 0.
    void awaitEvent(int event) throws IOException {
        long end = System.nanoTime() + 60_000_000_000L;
        while (heardBy[event] < heard.length) {
            turn(5);
            if (System.nanoTime() > end) {
                throw new IllegalStateException("Event " + event + " was not heard by all.");
            }
        }
    }

    private record Due(long at, int seat) {}

    /// Lets every seat send so many answers, spread by chance over that time; between the halves
    /// `between` happens.
    void answer(int run, int each, long spread, Runnable between) throws IOException {
        SplittableRandom chance = new SplittableRandom(run);
        PriorityQueue<Due> due = new PriorityQueue<>((a, b) -> Long.compare(a.at(), b.at()));
        long begin = System.nanoTime();
        for (int seat = 0; seat < sent.length; seat++) {
            for (int i = 0; i < each; i++) {
                due.add(new Due(begin + chance.nextLong(spread), seat));
            }
        }
        long wanted = acknowledged + refused + due.size();
        boolean isHalf = false;
        long end = begin + 10 * spread + 60_000_000_000L;
        while (acknowledged + refused < wanted) {
            long now = System.nanoTime();
            if (!isHalf && now - begin > spread / 2) {
                isHalf = true;
                between.run();
            }
            for (Due next = due.peek(); next != null && next.at() <= now; next = due.peek()) {
                due.poll();
                if (senders.get(next.seat()).asked == 0) {
                    sendAnswer(next.seat(), run);
                } else {
                    due.add(new Due(now + 20_000_000, next.seat()));
                }
            }
            turn(1);
            if (now > end) {
                throw new IllegalStateException("Answers were never acknowledged.");
            }
        }
    }

    private void sendAnswer(int seat, int run) throws IOException {
        int number = ++sent[seat];
        Wire wire = senders.get(seat);
        wire.asked = System.nanoTime();
        wire.send(
                post(
                        "/seat/" + room + "/answers",
                        cookies.get(seat),
                        "number=%d&run=%d&problem=%d&written=%d&fresh=1"
                                .formatted(number, run, number % 20, number)));
    }

    /// How many messages the seats sent in all.
    long sent() {
        return Arrays.stream(sent).asLongStream().sum();
    }

    private void turn(long wait) throws IOException {
        selector.select(this::take, wait);
        if (broken.isPresent()) {
            throw broken.get();
        }
    }

    private void take(SelectionKey key) {
        Wire wire = Wire.of(key);
        try {
            if (!wire.read(buffer)) {
                throw new IOException("The server let seat " + wire.seat + " go.");
            }
        } catch (IOException gone) {
            key.cancel();
            broken = Optional.of(gone);
            return;
        }
        if (wire.isStream) {
            hear(wire);
        } else {
            answered(wire);
        }
    }

    private void hear(Wire wire) {
        long now = System.nanoTime();
        for (; wire.seen < wire.came; wire.seen++) {
            int event = wire.seen - 1;
            if (event < 0) {
                greeted++;
            } else if (event < heardBy.length) {
                heard[wire.seat][event] = now;
                heardBy[event]++;
            }
        }
    }

    private void answered(Wire wire) {
        String text = wire.text();
        if (cookies.get(wire.seat).isEmpty()) {
            Matcher cookie = COOKIE.matcher(text);
            if (text.contains("\r\n\r\n") && cookie.find()) {
                cookies.set(wire.seat, cookie.group(1));
                seated++;
                wire.forget();
            }
            return;
        }
        int taken = text.indexOf(TAKEN);
        if (taken < 0 || !text.endsWith("}}")) {
            return;
        }
        wire.forget();
        if (text.startsWith(sent[wire.seat] + NONE_REFUSED, taken + TAKEN.length())) {
            acknowledged++;
        } else {
            refused++;
        }
        answerTimes.add(System.nanoTime() - wire.asked);
        wire.asked = 0;
    }

    @Override
    public void close() throws IOException {
        for (SelectionKey key : selector.keys()) {
            key.channel().close();
        }
        selector.close();
    }
}
