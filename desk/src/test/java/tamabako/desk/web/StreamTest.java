package tamabako.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// Event streams, and forms that come in pieces, as they are on the wire.
class StreamTest {

    private static final BlockingQueue<Visitor> CAME = new LinkedBlockingQueue<>();
    private static DeskServer server;

    /// What a test lets one visitor hear.
    private static final class Visitor implements Telling {

        private final Outlet out;
        private final BlockingQueue<byte[]> told = new LinkedBlockingQueue<>();
        private final CompletableFuture<Boolean> gone = new CompletableFuture<>();
        private volatile boolean isOver;

        private Visitor(Outlet out) {
            this.out = out;
        }

        private void say(String line) {
            told.add((line + "\n").getBytes(StandardCharsets.UTF_8));
            out.wake();
        }

        @Override
        public Optional<byte[]> next() {
            return Optional.ofNullable(told.poll());
        }

        @Override
        public boolean isOver() {
            return isOver;
        }

        @Override
        public void gone() {
            assertThat(gone.complete(true)).isTrue();
        }
    }

    @BeforeAll
    static void start() {
        List<Route> routes =
                List.of(
                        Route.get("/stream", _ -> Reply.stream(StreamTest::come)),
                        Route.post("/echo", request -> Reply.json(request.form().text("say"))),
                        Route.upload(
                                "/weigh",
                                4,
                                request ->
                                        Reply.json(
                                                "%d"
                                                        .formatted(
                                                                request.form()
                                                                        .file("file")
                                                                        .map(file ->
                                                                                file.bytes().length)
                                                                        .orElse(-1)))),
                        Route.get("/long", _ -> Reply.json("9".repeat(8 * 1024 * 1024))));
        server = DeskServer.start(InetAddress.getLoopbackAddress(), 0, List.of(() -> routes));
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static void come(Outlet out) {
        Visitor visitor = new Visitor(out);
        out.tell(visitor);
        CAME.add(visitor);
    }

    private static Socket connect() throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port());
        socket.setSoTimeout(10_000);
        return socket;
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
        socket.getOutputStream().flush();
    }

    private static BufferedReader reader(Socket socket) throws IOException {
        return new BufferedReader(
                new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
    }

    private static Visitor listen(Socket socket) throws IOException, InterruptedException {
        send(socket, "GET /stream HTTP/1.1\r\nHost: localhost\r\n\r\n");
        Visitor visitor = CAME.poll(10, TimeUnit.SECONDS);
        if (visitor == null) {
            throw new AssertionError("No visitor came.");
        }
        return visitor;
    }

    private static String headers(BufferedReader in) throws IOException {
        StringBuilder headers = new StringBuilder();
        for (String line = in.readLine(); line != null && !line.isEmpty(); line = in.readLine()) {
            headers.append(line).append('\n');
        }
        return headers.toString();
    }

    @Test
    void whatIsToldArrivesAtOnceAndInOrder() throws IOException, InterruptedException {
        try (Socket socket = connect()) {
            Visitor visitor = listen(socket);
            BufferedReader in = reader(socket);
            visitor.say("one");
            assertThat(headers(in))
                    .startsWith("HTTP/1.1 200 ")
                    .contains("text/event-stream; charset=utf-8", "nosniff");
            assertThat(in.readLine()).isEqualTo("one");
            visitor.say("two");
            visitor.say("three");
            assertThat(in.readLine()).isEqualTo("two");
            assertThat(in.readLine()).isEqualTo("three");
        }
    }

    @Test
    void whenItIsOverTheConnectionEnds() throws Exception {
        try (Socket socket = connect()) {
            Visitor visitor = listen(socket);
            visitor.told.add("last\n".getBytes(StandardCharsets.UTF_8));
            visitor.isOver = true;
            visitor.out.wake();
            BufferedReader in = reader(socket);
            headers(in);
            assertThat(in.readLine()).isEqualTo("last");
            assertThat(in.readLine()).isNull();
            assertThat(visitor.gone.get(10, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test
    void aVisitorWhoLeavesIsNoticedThoughNothingIsSaid() throws Exception {
        Visitor visitor;
        try (Socket socket = connect()) {
            visitor = listen(socket);
        }
        assertThat(visitor.gone.get(10, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void whoIsCutOffIsGone() throws Exception {
        try (Socket socket = connect()) {
            Visitor visitor = listen(socket);
            visitor.out.cut();
            assertThat(visitor.gone.get(10, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test
    void aSlowVisitorHoldsUpNobodyAndMissesNothing() throws IOException, InterruptedException {
        String line = "x".repeat(1024 * 1024);
        try (Socket slow = connect();
                Socket quick = connect()) {
            Visitor patient = listen(slow);
            for (int i = 0; i < 24; i++) {
                patient.say(line);
            }
            Visitor visitor = listen(quick);
            visitor.say("quick");
            BufferedReader in = reader(quick);
            headers(in);
            assertThat(in.readLine()).isEqualTo("quick");
            // What the sockets do not hold is still here.
            assertThat(patient.told).hasSizeGreaterThan(5);

            BufferedReader late = reader(slow);
            headers(late);
            for (int i = 0; i < 24; i++) {
                assertThat(late.readLine()).isEqualTo(line);
            }
            patient.say("and on");
            assertThat(late.readLine()).isEqualTo("and on");
        }
    }

    @Test
    void aFormThatComesInPiecesIsRead() throws IOException, InterruptedException {
        try (Socket socket = connect()) {
            send(
                    socket,
                    "POST /echo HTTP/1.1\r\nHost: localhost\r\nContent-Type:"
                            + " application/x-www-form-urlencoded\r\nContent-Length: 9\r\n\r\n");
            for (char letter : "say=beads".toCharArray()) {
                TimeUnit.MILLISECONDS.sleep(5);
                send(socket, String.valueOf(letter));
            }
            BufferedReader in = reader(socket);
            assertThat(headers(in)).startsWith("HTTP/1.1 200 ").contains("Content-Length: 5");
            assertThat(in.read()).isEqualTo('b');
        }
    }

    @Test
    void aFormInChunksIsReadAndAnotherFollowsOnTheSameConnection() throws IOException {
        String form =
                "POST /echo HTTP/1.1\r\nHost: localhost\r\nContent-Type:"
                        + " application/x-www-form-urlencoded\r\nTransfer-Encoding: chunked\r\n\r\n"
                        + "4\r\nsay=\r\n5\r\nbeads\r\n0\r\n\r\n";
        try (Socket socket = connect()) {
            BufferedReader in = reader(socket);
            for (int i = 0; i < 2; i++) {
                send(socket, form);
                assertThat(headers(in)).startsWith("HTTP/1.1 200 ");
                char[] body = new char[5];
                assertThat(in.read(body)).isEqualTo(5);
                assertThat(new String(body)).isEqualTo("beads");
            }
        }
    }

    @Test
    void whoAsksBeforeSendingIsToldToGoOn() throws IOException {
        try (Socket socket = connect()) {
            send(
                    socket,
                    "POST /echo HTTP/1.1\r\nHost: localhost\r\nContent-Type:"
                            + " application/x-www-form-urlencoded\r\nExpect:"
                            + " 100-continue\r\nContent-Length: 9\r\n\r\n");
            BufferedReader in = reader(socket);
            assertThat(headers(in)).startsWith("HTTP/1.1 100 ");
            send(socket, "say=beads");
            assertThat(headers(in)).startsWith("HTTP/1.1 200 ");
        }
    }

    @Test
    void aFileOfSomeMegabytesIsReadWhole() throws IOException {
        String head =
                "--B\r\nContent-Disposition: form-data; name=\"file\"; filename=\"f\"\r\n\r\n";
        String file = "7".repeat(3_000_000);
        String body = head + file + "\r\n--B--\r\n";
        try (Socket socket = connect()) {
            send(
                    socket,
                    "POST /weigh HTTP/1.1\r\nHost: localhost\r\nContent-Type: multipart/form-data;"
                            + " boundary=B\r\nContent-Length: "
                            + body.length()
                            + "\r\n\r\n"
                            + body);
            BufferedReader in = reader(socket);
            assertThat(headers(in)).startsWith("HTTP/1.1 200 ");
            char[] told = new char[7];
            assertThat(in.read(told)).isEqualTo(7);
            assertThat(new String(told)).isEqualTo("3000000");
        }
    }

    @Test
    void aLongReplyReachesAVisitorWhoReadsLate() throws IOException, InterruptedException {
        try (Socket socket = connect()) {
            send(socket, "GET /long HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
            TimeUnit.MILLISECONDS.sleep(100);
            BufferedReader in = reader(socket);
            assertThat(headers(in)).contains("Content-Length: 8388608");
            assertThat(in.lines().mapToLong(String::length).sum()).isEqualTo(8_388_608);
        }
    }

    @Test
    void whoOnlyAsksForTheHeadersOfAStreamGetsThemAlone() throws IOException {
        try (Socket socket = connect()) {
            send(socket, "HEAD /stream HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
            BufferedReader in = reader(socket);
            assertThat(headers(in)).contains("text/event-stream");
            assertThat(in.readLine()).isNull();
        }
    }
}
