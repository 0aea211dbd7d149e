package tamabako.bench.room;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// The tablets of [KillRounds]: each counts what the desk acknowledged, and goes on after a kill
/// with the number that the desk says it has.
final class KilledSeats {

    private static final Pattern TAKEN = Pattern.compile("\"taken\":(\\d+)");

    private final String[] cookies;
    private final AtomicIntegerArray acknowledged;
    private final AtomicLong lost = new AtomicLong();
    private final AtomicLong keptUnasked = new AtomicLong();

    KilledSeats(int seats) {
        cookies = new String[seats];
        acknowledged = new AtomicIntegerArray(seats);
    }

    long acknowledged() {
        long all = 0;
        for (int seat = 0; seat < cookies.length; seat++) {
            all += acknowledged.get(seat);
        }
        return all;
    }

    long lost() {
        return lost.get();
    }

    long keptUnasked() {
        return keptUnasked.get();
    }

    /// Looks what the desk has of each seat; the first time, the seats come in.
    void compare(ServerProcess server) throws IOException {
        for (int seat = 0; seat < cookies.length; seat++) {
            if (cookies[seat] == null) {
                join(server, seat);
                continue;
            }
            String state = send(server, seat, "GET", "/seat/" + server.room + "/state", "");
            int taken = taken(state);
            int had = acknowledged.get(seat);
            if (taken < had) {
                lost.addAndGet(had - taken);
            }
            keptUnasked.addAndGet(Math.max(0, taken - had));
            acknowledged.set(seat, taken);
        }
    }

    private void join(ServerProcess server, int seat) throws IOException {
        HttpURLConnection connection = open(server, "/join/" + server.code, "POST");
        connection.setInstanceFollowRedirects(false);
        connection
                .getOutputStream()
                .write(("alias=pupil" + seat).getBytes(StandardCharsets.US_ASCII));
        cookies[seat] = connection.getHeaderField("Set-Cookie").split(";", 2)[0];
    }

    /// Every seat sends answers as fast as they are acknowledged, until the desk is killed after so
    /// many milliseconds.
    void answerUntilKilled(ServerProcess server, long milliseconds)
            throws IOException, InterruptedException {
        CountDownLatch over = new CountDownLatch(cookies.length);
        for (int seat = 0; seat < cookies.length; seat++) {
            int who = seat;
            Thread.ofVirtual()
                    .start(() -> {
                        try {
                            while (true) {
                                answer(server, who);
                            }
                        } catch (IOException killed) {
                            over.countDown();
                        }
                    });
        }
        Thread.sleep(milliseconds);
        server.kill();
        if (!over.await(30, TimeUnit.SECONDS)) {
            throw new IllegalStateException("A seat never noticed that the desk was gone.");
        }
    }

    private void answer(ServerProcess server, int seat) throws IOException {
        int number = acknowledged.get(seat) + 1;
        String form =
                "number=%d&run=1&problem=%d&written=%d&fresh=1"
                        .formatted(number, number % 20, number);
        String told = send(server, seat, "POST", "/seat/" + server.room + "/answers", form);
        if (taken(told) == number) {
            acknowledged.set(seat, number);
        }
    }

    private static int taken(String told) throws IOException {
        Matcher taken = TAKEN.matcher(told);
        if (!taken.find()) {
            throw new IOException("The desk said: " + told);
        }
        return Integer.parseInt(taken.group(1));
    }

    private String send(ServerProcess server, int seat, String method, String path, String form)
            throws IOException {
        HttpURLConnection connection = open(server, path, method);
        connection.setRequestProperty("Cookie", cookies[seat]);
        if (!form.isEmpty()) {
            connection.getOutputStream().write(form.getBytes(StandardCharsets.US_ASCII));
        }
        boolean isGood = connection.getResponseCode() < 400;
        try (var body = isGood ? connection.getInputStream() : connection.getErrorStream()) {
            return new String(body.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static HttpURLConnection open(ServerProcess server, String path, String method)
            throws IOException {
        HttpURLConnection connection =
                (HttpURLConnection)
                        URI.create("http://127.0.0.1:" + server.port + path)
                                .toURL()
                                .openConnection();
        connection.setRequestMethod(method);
        connection.setReadTimeout(20_000);
        connection.setDoOutput(method.equals("POST"));
        return connection;
    }
}
