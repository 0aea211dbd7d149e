package tamabako.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.desk.web.DeskServer;

/// The pages as they come from the server, before any script runs.
class WorkPagesTest {

    private static final HttpClient BROWSER = HttpClient.newHttpClient();
    private static DeskServer server;

    @BeforeAll
    static void start() {
        server = DeskServer.start(InetAddress.getLoopbackAddress(), 0, List.of(new WorkPages()));
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void theStepsAreInThePageWithoutScripts() throws Exception {
        String page = get("/work?sum=54-29%2B38", "en").body();

        assertThat(text(page))
                .contains("0 5 0", "0 3 4", "0 6 3")
                .contains("Take 2 from the tens: 2 = 5 − 3, so add 3 and take the five off.")
                .contains("The answer is 63.");
    }

    @Test
    void everyStepIsSaidInTheReadersLanguage() throws Exception {
        assertThat(get("/work?sum=54-29%2B38", "ja").body())
                .contains("<html lang=\"ja\">", "一の位から9は引けないので、十の位から1繰り下げます。", "答えは63です。");
    }

    @ParameterizedTest
    @CsvSource({
        "12 +, en, At character 5 a number is missing",
        "5 / 0, en, divided by 0",
        "√-4, en, below 0",
        "12 +, ja, 数",
        "5 x 4 / 2, ja, 2",
    })
    void aSumThatCannotBeWorkedIsToldBesideItsField(String sum, String language, String part)
            throws Exception {
        HttpResponse<String> reply = get("/work?sum=" + encoded(sum), language);

        assertThat(reply.statusCode()).isEqualTo(422);
        String alert = between(reply.body(), "role=\"alert\">", "</p>");
        assertThat(alert).contains(part);
        assertThat(reply.body())
                .contains("aria-invalid=\"true\"")
                .contains("value=\"" + sum + "\"");
    }

    @ParameterizedTest
    @CsvSource({"rods, 99", "rods, x", "unit, ZZ", "places, 13", "places, -1"})
    void aChoiceThatCannotBeIsToldBesideItsField(String field, String value) throws Exception {
        HttpResponse<String> reply = get("/work?sum=1%2B1&" + field + "=" + value, "en");

        assertThat(reply.statusCode()).isEqualTo(422);
        assertThat(between(reply.body(), "role=\"alert\">", "</span>"))
                .contains("\"" + value + "\"");
        assertThat(reply.body()).contains("<details class=\"work-choices\" open>");
    }

    @Test
    void tooShortAFrameIsTold() throws Exception {
        assertThat(get("/work?sum=99%2B2&rods=2", "en").body())
                .contains("it needs 3 rods, and the frame has 2");
    }

    @Test
    void theChoicesChangeTheWorking() throws Exception {
        assertThat(text(get("/work?sum=8%2B5&rods=5&carry=first", "en").body()))
                .contains("000 1 8", "0001 3");
        assertThat(get("/work?sum=7/3&places=2", "en").body()).contains("2.33");
        assertThat(get("/work?sum=7/3&places=1&rounding=down", "en").body()).contains("remainder");
        assertThat(get("/work?sum=1%2B1&frame=suanpan", "en").body())
                .contains("\"frame\":\"suanpan\"");
    }

    @Test
    void whatIsTypedIsNeverMarkup() throws Exception {
        String page = get("/work?sum=" + encoded("\"><script>alert(1)</script>"), "en").body();

        assertThat(page).doesNotContain("<script>alert");
        assertThat(get("/work?sum=1%2B1&unit=" + encoded("<b>"), "en").body())
                .doesNotContain("<b>\"")
                .contains("&lt;b>");
    }

    @Test
    void aVeryLongSumIsRefusedAndNotWorked() throws Exception {
        String sum = "1" + "+1".repeat(4_000);

        assertThat(get("/work?sum=" + encoded(sum), "en").statusCode()).isIn(200, 422, 431);
    }

    @Test
    void theEmptyPageOffersSumsThatCanBeWorked() throws Exception {
        String page = get("/work", "en").body();

        for (String example : WorkPage.EXAMPLES) {
            String address = "/work?sum=" + WorkPage.inAddress(example);
            assertThat(page).contains("href=\"" + address + "\"");
            assertThat(get(address, "en").statusCode()).as(example).isEqualTo(200);
        }
    }

    @Test
    void theFreeFrameNamesEveryPlaceAndRod() throws Exception {
        assertThat(get("/frame", "en").body())
                .contains("\"0\":\"ones\"", "\"-3\":\"thousandths\"", "\"1.4\":\"9: ");
        assertThat(get("/frame", "ja").body()).contains("\"0\":\"一の位\"");
    }

    private static HttpResponse<String> get(String path, String language) throws Exception {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(server.url()).resolve(path))
                        .header("Accept-Language", language)
                        .build();
        return BROWSER.send(request, BodyHandlers.ofString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String between(String page, String from, String to) {
        assertThat(page).contains(from);
        String rest = page.substring(page.indexOf(from) + from.length());
        return rest.substring(0, rest.indexOf(to));
    }

    /// The page without its tags, each of which becomes a blank, as does a blank that never breaks.
    private static String text(String page) {
        return page.replaceAll("<[^>]*>", " ").replaceAll("[\\s\u00a0]+", " ");
    }
}
