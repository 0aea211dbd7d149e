package tamabako.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

class AccessTest {

    private static final Route PLAIN = Route.get("/plain", AccessTest::told);

    /// Lets in whoever says in a cookie that they are enough.
    private static final Door BY_COOKIE =
            new Door() {
                @Override
                public Who who(Caller caller) {
                    return caller.cookie("role")
                            .<Who>map(role ->
                                    new Who.SignedIn("t", "Mori", Access.valueOf(role), "s"))
                            .orElseGet(Who.Nobody::new);
                }

                @Override
                public Optional<Reply> turnAway(Who who, Access access, Verb verb, String here) {
                    return who.may(access)
                            ? Optional.empty()
                            : Optional.of(new Reply.SeeOther("/door?back=" + here, Map.of()));
                }
            };

    private static Reply told(Request request) {
        return Reply.json(request.who() + " from " + request.caller().address());
    }

    @Test
    void aRouteIsForTeachersUnlessItSaysOtherwise() {
        assertThat(PLAIN.access()).isEqualTo(Access.TEACHER);
        Route open = PLAIN.forWhom(Access.PUPIL);
        assertThat(open.access()).isEqualTo(Access.PUPIL);
        assertThat(open.address()).isEqualTo("/plain");
        assertThat(open.match("/plain")).isPresent();
    }

    @Test
    void whoeverMayDoMoreMayDoLessToo() {
        List<Access> rising =
                List.of(
                        Access.ANYONE,
                        Access.PUPIL,
                        Access.ASSISTANT,
                        Access.TEACHER,
                        Access.OWNER);
        assertThat(rising).containsExactlyInAnyOrder(Access.values());
        for (Access mine : rising) {
            for (Access wanted : rising) {
                assertThat(mine.suffices(wanted))
                        .as("%s where %s is wanted", mine, wanted)
                        .isEqualTo(rising.indexOf(mine) >= rising.indexOf(wanted));
            }
        }
        assertThat(new Who.Nobody().may(Access.ASSISTANT)).isFalse();
        assertThat(new Who.Nobody().may(Access.PUPIL)).isTrue();
        assertThat(new Who.AtThisComputer().may(Access.OWNER)).isTrue();
    }

    @Test
    void theDoorIsAskedBeforeAPageAndBeforeAForm() throws IOException, InterruptedException {
        Route form = Route.post("/form", AccessTest::told).forWhom(Access.OWNER);
        Route open = Route.get("/open", AccessTest::told).forWhom(Access.ANYONE);
        List<Routes> pages = List.of(() -> List.of(PLAIN, form, open));
        try (DeskServer desk =
                DeskServer.start(InetAddress.getLoopbackAddress(), 0, pages, BY_COOKIE)) {
            HttpResponse<String> turned = send(desk, "/plain?a=1", "");
            assertThat(turned.statusCode()).isEqualTo(303);
            assertThat(turned.headers().firstValue("Location")).hasValue("/door?back=/plain?a=1");
            assertThat(send(desk, "/plain", "role=ASSISTANT").statusCode()).isEqualTo(303);
            assertThat(send(desk, "/plain", "language=en; role=TEACHER").body())
                    .contains("name=Mori, role=TEACHER", "from 127.0.0.1");
            assertThat(send(desk, "/open", "").body()).contains("Nobody");

            assertThat(post(desk, "role=TEACHER").statusCode()).isEqualTo(303);
            assertThat(post(desk, "role=OWNER").body()).contains("role=OWNER");
        }
    }

    @Test
    void aDeskThatOthersReachIsNotStartedWithoutADoor() throws UnknownHostException {
        InetAddress everywhere = InetAddress.getByName("0.0.0.0");
        Assertions.assertThatThrownBy(() -> DeskServer.start(everywhere, 0, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static HttpResponse<String> send(DeskServer desk, String path, String cookie)
            throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(URI.create(desk.url()).resolve(path)), cookie);
    }

    private static HttpResponse<String> post(DeskServer desk, String cookie)
            throws IOException, InterruptedException {
        return send(
                HttpRequest.newBuilder(URI.create(desk.url()).resolve("/form"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Sec-Fetch-Site", "same-origin")
                        .POST(BodyPublishers.ofString("a=1")),
                cookie);
    }

    private static HttpResponse<String> send(HttpRequest.Builder request, String cookie)
            throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(request.header("Cookie", cookie).build(), BodyHandlers.ofString());
    }
}
