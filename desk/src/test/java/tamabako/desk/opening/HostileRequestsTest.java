package tamabako.desk.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.testkit.Draw;
import tamabako.testkit.Property;

/// Whatever is sent to the desk, it answers with a page that tells what is wrong, and goes on.
class HostileRequestsTest {

    private static final HttpClient SENDER = HttpClient.newHttpClient();

    @TempDir private static Path folder;

    private static OpenDesk desk;
    private static String sheet;

    @BeforeAll
    static void open() {
        desk = OpenDesk.open(folder, false, InetAddress.getLoopbackAddress(), 0);
        sheet = desk.book().sheets().latest(1).getFirst().sheet().id();
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return SENDER.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException failed) {
            throw new AssertionError(failed);
        }
    }

    private static HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create(desk.url()).resolve(path.replace("SHEET", sheet)));
    }

    private static HttpResponse<String> post(String path, String form) {
        return send(
                at(path).header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(form)));
    }

    private static void assertTold(HttpResponse<String> reply, int status, String told) {
        assertThat(reply.statusCode()).isEqualTo(status);
        assertThat(reply.body())
                .contains(told)
                .doesNotContain("Exception", "tamabako.desk", "io.undertow");
        assertThat(reply.headers().firstValue("Content-Type")).hasValue("text/html; charset=utf-8");
        assertThat(send(at("/")).statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    /sheets/NO-SUCH        | 404 | There is no sheet
                    /sheets/NO-SUCH.pdf    | 404 | There is no sheet
                    /mark/NO-SUCH          | 404 | There is no sheet
                    /mark?sheet=NO-SUCH    | 404 | There is no sheet
                    /marked/NO-SUCH        | 404 | no such marked work
                    /sheets                | 405 | does not take that kind of request
                    /language              | 405 | does not take that kind of request
                    /sheets/SHEET.pdf?part=all      | 400 | cannot be printed
                    /sheets/SHEET.pdf?size=huge     | 400 | cannot be printed
                    /sheets/SHEET.pdf?language=%2F  | 400 | cannot be printed
                    /make?rows=many        | 400 | whole number from 2 to 30
                    /make?rows=0           | 400 | whole number from 2 to 30
                    /make?count=99999999999999999999 | 400 | whole number from 1 to 100
                    /make?kind=puzzle      | 400 | Choose one of these
                    /make?rows=%FF         | 400 | address cannot be read
                    /make?by=magic         | 400 | Choose one of these
                    /make?ji=many          | 400 | whole number from 1 to 480
                    /make?kind=product&another=99999&seed=1&swaps=9999-99.x.0-0 | 200 | 10 problems
                    /papers/NO-SUCH        | 404 | There are no papers
                    /papers/NO-SUCH.pdf    | 404 | There are no papers
                    /papers?find=7KMX-2P9T-HC4R | 404 | paper
                    /papers?find=%3Cb%3E   | 404 | no paper
                    /ladders/NO-SUCH       | 404 | There is no ladder
                    /ladders/NO-SUCH.yaml  | 404 | There is no ladder
                    /templates             | 405 | does not take that kind of request
                    /make?rows=%E3%81      | 400 | address cannot be read
                    /static/css/nothing.css | 404 | There is no such page
                    """)
    void whatCannotBeShownIsTold(String path, int status, String told) {
        assertTold(send(at(path)), status, told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    /sheets       | kind=column | 400 | whole number
                    /sheets       | a=b         | 400 | Choose one of these
                    /mark/SHEET   | a1=         | 400 | No answer has been typed
                    /mark/SHEET   | a1=1&pupil=nobody | 404 | not in the class book
                    /mark/NO-SUCH | a1=1        | 404 | There is no sheet
                    /language     | to=tlh      | 400 | does not speak
                    /mark/SHEET   | a1=%C3%28   | 400 | letters that cannot be read
                    /             | a=b         | 405 | does not take that kind of request
                    /nowhere      | a=b         | 404 | There is no such page
                    /templates    | rows=5      | 400 | has no name
                    /papers       | ladder=first-steps | 400 | Choose one of these
                    /papers       | ladder=first-steps&grade=step-2&forms=999 | 400 | whole number from 1 to 20
                    /own-ladder   | yaml=       | 400 | holds no ladder
                    /own-ladder   | yaml=%22    | 400 | Line 1
                    """)
    void aFormThatCannotBeTakenIsTold(String path, String form, int status, String told) {
        assertTold(post(path, form), status, told);
    }

    @Test
    void aFieldOfOneMegabyteIsRefused() {
        assertTold(post("/mark/SHEET", "a1=" + "7".repeat(1 << 20)), 413, "up to 256 KB");
    }

    @Test
    void anAnswerLongerThanAnyIsToldWithItsNumber() {
        assertTold(post("/mark/SHEET", "a2=" + "7".repeat(5_000)), 400, "Answer 2 is longer");
    }

    @Test
    void moreLinesThanProblemsAreTold() {
        assertTold(post("/mark/SHEET", "pasted=" + "7%0A".repeat(300)), 400, "300 lines");
    }

    @Test
    void troubleIsToldInTheReadersLanguage() {
        HttpResponse<String> reply = send(at("/sheets/NO-SUCH").header("Accept-Language", "ja"));
        assertTold(reply, 404, "「NO-SUCH」というプリントはありません");
    }

    @Test
    void aScriptInATitleStaysText() {
        HttpResponse<String> kept =
                post(
                        "/sheets",
                        "kind=product&multiplicand=2&multiplier=2&count=3&seed=1"
                                + "&title=%3Cscript%3Ealert(1)%3C%2Fscript%3E");
        assertThat(kept.statusCode()).isEqualTo(303);
        String page = send(at(kept.headers().firstValue("Location").orElseThrow())).body();
        assertThat(page).contains("&lt;script&gt;alert(1)").doesNotContain("<script>alert");
    }

    @Test
    void afterALanguageIsChosenOnlyTheDesksOwnPagesAreGoneBackTo() {
        HttpResponse<String> away = post("/language", "to=ja&back=%2F%2Felsewhere.example%2F");
        HttpResponse<String> home = post("/language", "to=ja&back=%2Fmake%3Frows%3D5");
        assertThat(away.headers().firstValue("Location")).hasValue("/");
        assertThat(home.headers().firstValue("Location")).hasValue("/make?rows=5");
        assertThat(home.headers().firstValue("Set-Cookie").orElse(""))
                .startsWith("language=ja;")
                .contains("SameSite=Strict", "HttpOnly");
    }

    @Test
    void anotherNameThatPointsHereDoesNotOpenTheDesk() throws IOException {
        String reply =
                raw("GET / HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n");
        assertThat(reply).startsWith("HTTP/1.1 421").contains("not known under this name");
    }

    @Test
    void onlyFilesMeantForPagesAreServed() throws IOException {
        for (String path :
                List.of("/static/../words/desk_en.properties", "/static/css/../mark.svg")) {
            String reply =
                    raw(
                            "GET "
                                    + path
                                    + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
            assertThat(reply).startsWith("HTTP/1.1 404").contains("There is no such page");
        }
        assertThat(send(at("/static/mark.svg")).statusCode()).isEqualTo(200);
    }

    @Test
    void everyPageForbidsWhatItDoesNotNeed() {
        var headers = send(at("/")).headers();
        assertThat(headers.firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'self'", "frame-ancestors 'none'");
        assertThat(headers.firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(headers.firstValue("Referrer-Policy")).hasValue("same-origin");
        assertThat(headers.firstValue("Cross-Origin-Opener-Policy")).hasValue("same-origin");
        assertThat(headers.firstValue("Cross-Origin-Embedder-Policy")).hasValue("require-corp");
        assertThat(headers.firstValue("Cache-Control")).hasValue("no-store");
    }

    @Test
    void bytesThatAreNoRequestDoNotStopTheDesk() {
        Property.forSeeds(
                60,
                draw -> {
                    try {
                        raw(garbled(draw));
                    } catch (IOException closed) {
                        assertThat(closed).hasMessageContaining("Connection reset");
                    }
                });
        assertThat(send(at("/")).statusCode()).isEqualTo(200);
    }

    /// A request with some of its bytes changed, doubled or cut off.
    private static String garbled(Draw draw) {
        StringBuilder request =
                new StringBuilder(
                        """
                        POST /language HTTP/1.1
                        Host: localhost
                        Content-Length: 5
                        Content-Type: application/x-www-form-urlencoded
                        Connection: close

                        to=ja\
                        """
                                .replace("\n", "\r\n"));
        for (int i = draw.between(1, 8); i > 0; i--) {
            int at = draw.between(0, request.length() - 1);
            request.setCharAt(at, (char) draw.between(0, 255));
        }
        if (draw.chance(1, 4)) {
            request.setLength(draw.between(1, request.length()));
        }
        return request.toString();
    }

    /// Sends bytes as they are, says that no more come, and reads what comes back.
    private static String raw(String bytes) throws IOException {
        URI place = URI.create(desk.url());
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), place.getPort())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(bytes.getBytes(StandardCharsets.ISO_8859_1));
            socket.shutdownOutput();
            InputStream reply = socket.getInputStream();
            return new String(reply.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
