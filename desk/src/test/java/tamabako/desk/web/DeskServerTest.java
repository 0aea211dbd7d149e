package tamabako.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class DeskServerTest {

    private static final HttpClient BROWSER = HttpClient.newHttpClient();
    private static DeskServer server;

    @BeforeAll
    static void start() {
        List<Route> routes =
                List.of(
                        Route.get("/slips/{id}", request -> Reply.json(request.part("id"))),
                        Route.get(
                                "/broken",
                                _ -> {
                                    throw new IllegalStateException("secret inside");
                                }),
                        Route.post("/echo", request -> Reply.json(request.form().text("say"))));
        server = DeskServer.start(InetAddress.getLoopbackAddress(), 0, List.of(() -> routes));
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return BROWSER.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException failed) {
            throw new AssertionError(failed);
        }
    }

    private static HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create(server.url()).resolve(path));
    }

    private static HttpRequest.Builder form(String path, String body) {
        return at(path).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body));
    }

    @Test
    void aRouteGetsTheNamedPartOfItsAddress() {
        assertThat(send(at("/slips/k7f2")).body()).isEqualTo("k7f2");
    }

    @Test
    void anUnknownAddressIsAPageInTheReadersLanguage() {
        HttpResponse<String> english = send(at("/nowhere"));
        HttpResponse<String> japanese =
                send(at("/nowhere").header("Accept-Language", "ja-JP,en;q=0.5"));

        assertThat(english.statusCode()).isEqualTo(404);
        assertThat(english.body()).contains("There is no such page").contains("<html lang=\"en\">");
        assertThat(japanese.statusCode()).isEqualTo(404);
        assertThat(japanese.body()).contains("このページはありません").contains("<html lang=\"ja\">");
    }

    @Test
    void aFormIsReadAsUtf8() {
        assertThat(send(form("/echo", "say=%E3%81%9D%E3%82%8D%E3%81%B0%E3%82%93+%2B7")).body())
                .isEqualTo("そろばん +7");
    }

    @Test
    void brokenUtf8IsToldAndRefused() {
        HttpResponse<String> reply = send(form("/echo", "say=%FF%FE"));
        assertThat(reply.statusCode()).isEqualTo(400);
        assertThat(reply.body()).contains("letters that cannot be read");
    }

    @Test
    void aFormOfOneMegabyteIsToldAndRefused() {
        HttpResponse<String> reply = send(form("/echo", "say=" + "9".repeat(1 << 20)));
        assertThat(reply.statusCode()).isEqualTo(413);
        assertThat(reply.body()).contains("up to 256 KB");
    }

    @Test
    void aFormWithThousandsOfFieldsIsToldAndRefused() {
        assertThat(send(form("/echo", "a=1&".repeat(5_000))).statusCode()).isEqualTo(413);
    }

    @Test
    void aFormOfAnotherShapeIsToldAndRefused() {
        HttpRequest.Builder request =
                at("/echo").header("Content-Type", "text/plain").POST(BodyPublishers.ofString("x"));
        assertThat(send(request).statusCode()).isEqualTo(415);
    }

    @Test
    void theWrongMethodIsToldWithTheRightOnes() {
        HttpResponse<String> reply = send(at("/echo"));
        assertThat(reply.statusCode()).isEqualTo(405);
        assertThat(reply.headers().firstValue("Allow")).contains("POST");
        assertThat(send(at("/slips/x").DELETE()).statusCode()).isEqualTo(405);
        assertThat(send(at("/slips/x").method("WHATEVER", BodyPublishers.noBody())).statusCode())
                .isEqualTo(405);
    }

    @Test
    void aFormFromAnotherSiteIsRefused() {
        assertThat(
                        send(form("/echo", "say=1").header("Origin", "https://elsewhere.example"))
                                .statusCode())
                .isEqualTo(403);
        assertThat(send(form("/echo", "say=1").header("Sec-Fetch-Site", "cross-site")).statusCode())
                .isEqualTo(403);
        assertThat(
                        send(form("/echo", "say=1").header("Sec-Fetch-Site", "same-origin"))
                                .statusCode())
                .isEqualTo(200);
    }

    @Test
    void aBugInAPageIsAPageWithoutItsInsides() {
        HttpResponse<String> reply = send(at("/broken"));
        assertThat(reply.statusCode()).isEqualTo(500);
        assertThat(reply.body()).contains("Something broke").doesNotContain("secret", "Exception");
    }

    @Test
    void aFloodOfHeadersIsRefusedAndTheServerGoesOn() {
        HttpResponse<String> reply = send(at("/slips/x").header("X-Flood", "9".repeat(60_000)));
        assertThat(reply.statusCode()).isBetween(400, 431);
        assertThat(reply.body()).contains("cannot be read");
        assertThat(send(at("/slips/x")).statusCode()).isEqualTo(200);
    }

    @Test
    void anAddressLongerThanAnyIsRefused() {
        HttpResponse<String> reply = send(at("/slips/x?" + "9".repeat(60_000)));
        assertThat(reply.statusCode()).isBetween(400, 431);
    }
}
