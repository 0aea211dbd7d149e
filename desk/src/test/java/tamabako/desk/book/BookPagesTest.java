package tamabako.desk.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.desk.web.DeskServer;
import tamabako.records.Attended;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Note;
import tamabako.records.Pupil;
import tamabako.records.RoomLog;
import tamabako.records.Work;

/// The pages of the class book as a browser without scripts asks for them, and as nobody should.
class BookPagesTest {

    private static final HttpClient SENDER = HttpClient.newHttpClient();
    private static final Instant NOON = Instant.parse("2026-04-14T12:00:00Z");

    @TempDir private Path folder;

    private ClassBook book;
    private DeskServer desk;
    private final List<String> erased = new ArrayList<>();

    @BeforeEach
    void open() {
        book = ClassBook.open(folder.resolve("book.sqlite"));
        book.groups().keep(new Group("TUE", "Tuesday", false));
        book.groups().keep(new Group("FRI", "Friday", false));
        book.groups().keep(new Group("DEMO", "Demo", true));
        book.pupils().keep(new Pupil("AOI", "TUE", "Aoi", Locale.JAPANESE, false));
        book.pupils().keep(new Pupil("BEN", "TUE", "Ben", Locale.ENGLISH, false));
        desk =
                DeskServer.start(
                        InetAddress.getLoopbackAddress(),
                        0,
                        List.of(
                                new BookPages(
                                        book,
                                        InstantSource.fixed(NOON),
                                        ZoneOffset.UTC,
                                        List.of(erased::add))));
    }

    @AfterEach
    void close() {
        desk.close();
        book.close();
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return SENDER.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException failed) {
            throw new AssertionError(failed);
        }
    }

    private HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create(desk.url()).resolve(path));
    }

    private HttpResponse<String> look(String path) {
        return send(at(path));
    }

    private HttpResponse<String> post(String path, String form) {
        return send(
                at(path).header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(form)));
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private Pupil pupil(String id) {
        return book.pupils().find(id).orElseThrow();
    }

    private static final String USUAL = "&language=en&extra=0&pace=100";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    /book/groups/NOBODY            | 404 | group is not in the class book
                    /book/groups/NOBODY/attendance | 404 | group is not in the class book
                    /book/pupils/NOBODY            | 404 | pupil is not in the class book
                    /book/pupils/NOBODY/edit       | 404 | pupil is not in the class book
                    /book/pupils/NOBODY/copy       | 404 | pupil is not in the class book
                    /book/pupils/NOBODY.json       | 404 | pupil is not in the class book
                    /book/pupils/NOBODY/erase      | 404 | pupil is not in the class book
                    /book/pupils/AOI/notes         | 405 | does not take that kind of request
                    /book/groups/TUE/attendance?day=2026-04-15 | 400 | no attendance for that day
                    /book/groups/TUE/attendance?day=yesterday  | 400 | no attendance for that day
                    /book/groups/TUE/attendance?day=-999999999-01-01 | 400 | no attendance for that day
                    """)
    void whatIsNotThereIsTold(String path, int status, String told) {
        HttpResponse<String> reply = look(path);
        assertThat(reply.statusCode()).isEqualTo(status);
        assertThat(reply.body()).contains(told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    /book/groups               | group=                 | The group has no name
                    /book/groups               | group=tuesday          | There is a group
                    /book/groups/TUE/rename    | group=FRIDAY           | There is a group
                    /book/groups/TUE/remove    | a=b                    | There are 2 pupils in this group
                    /book/groups/TUE/pupils    | name=%20%E2%80%8F      | The name is missing
                    /book/groups/TUE/pupils    | name=aoi               | There is a aoi in this group already
                    /book/groups/TUE/pupils    | name=X&kana=Emi        | other than kana
                    /book/groups/TUE/pupils    | name=X&born=1066       | whole number from 1916 to 2026
                    /book/groups/TUE/pupils    | name=X&extra=-1        | whole number from 0 to 300
                    /book/groups/TUE/pupils    | name=X&pace=0          | whole number from 20 to 300
                    /book/groups/TUE/pupils    | name=X&language=tlh    | Choose one of these
                    /book/pupils/AOI/edit      | name=X&group-id=NOBODY | Choose one of these
                    /book/pupils/AOI/edit      | name=Ben               | There is a Ben in this group already
                    /book/pupils/AOI/edit      | name=Aoi&group-id=DEMO | Choose one of these
                    /book/pupils/AOI/notes     | note=%20               | The note is empty
                    /book/pupils/AOI/days      | day=2026-04-15&how=late | still to come
                    /book/pupils/AOI/days      | day=2026-02-30&how=late | no day that can be read
                    /book/pupils/AOI/days      | day=2026-04-14&how=ill | Choose one of these
                    /book/pupils/AOI/results   | result=&kind=exam&result-day=2026-04-14 | Which exam or contest
                    /book/pupils/AOI/results   | result=6&kind=exam&result-day=x | no day that can be read
                    /book/pupils/AOI/results   | result=6&kind=exam&result-day=2026-04-14&points=9&most=8 | 9 points are more than the 8
                    /book/pupils/AOI/results   | result=6&kind=exam&result-day=2026-04-14&points=9 | whole number from 1 to 99999
                    /book/pupils/AOI/erase     | name=Ben               | Nothing was erased
                    /book/retention            | months=0               | whole number from 1 to 240
                    """)
    void aFormThatCannotBeTakenIsToldAndNothingIsChanged(String path, String form, String told) {
        HttpResponse<String> reply = post(path, form + (path.contains("pupils") ? USUAL : ""));
        assertThat(reply.statusCode()).isEqualTo(400);
        assertThat(reply.body()).contains(told);
        assertThat(book.pupils().all()).containsExactly(pupil("AOI"), pupil("BEN"));
        assertThat(book.groups().all())
                .extracting(Group::name)
                .containsExactly("Demo", "Friday", "Tuesday");
        assertThat(book.notes().of("AOI")).isEmpty();
        assertThat(book.attendance().of("AOI")).isEmpty();
        assertThat(book.results().of("AOI")).isEmpty();
        assertThat(book.settings().find("retention")).isEmpty();
        assertThat(erased).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "'; drop table pupil; --",
                "\u202Eevil\u202C",
                "👩‍🏫🧮",
                "${1+1} #{x} {{y}}",
                "=HYPERLINK(\"x\")"
            })
    void aNameIsOnlyEverText(String name) {
        assertThat(post("/book/groups/TUE/pupils", "name=" + encode(name) + USUAL).statusCode())
                .isEqualTo(303);
        Pupil kept =
                book.pupils().in("TUE").stream()
                        .filter(pupil -> pupil.name().equals(name))
                        .findFirst()
                        .orElseThrow();
        post("/book/pupils/" + kept.id() + "/notes", "note=" + encode(name));
        for (String path :
                List.of(
                        "/book",
                        "/book/groups/TUE",
                        "/book/groups/TUE/attendance",
                        "/book/pupils/" + kept.id(),
                        "/book/pupils/" + kept.id() + "/edit",
                        "/book/pupils/" + kept.id() + "/copy",
                        "/book/pupils/" + kept.id() + "/erase")) {
            HttpResponse<String> page = look(path);
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).doesNotContain("<script>alert", "<img src=x");
        }
        assertThat(
                        post("/book/pupils/" + kept.id() + "/erase", "name=" + encode(name))
                                .statusCode())
                .isEqualTo(303);
        assertThat(erased).containsExactly(kept.id());
        assertThat(book.pupils().find(kept.id())).isEmpty();
    }

    @Test
    void aPupilIsChangedAndMovedWithAllThatIsKnown() {
        book.notes().keep(Note.of("AOI", NOON, "a note"));
        post(
                "/book/pupils/AOI/edit",
                "name=%E8%91%B5&kana=%E3%81%82%E3%81%8A%E3%81%84&born=2017&grade=6"
                        + "&flashing=none&extra=50&pace=80&language=ja&group-id=FRI");

        Pupil changed = pupil("AOI");
        assertThat(changed.name()).isEqualTo("葵");
        assertThat(changed.groupId()).isEqualTo("FRI");
        assertThat(changed.about().kana()).isEqualTo("あおい");
        assertThat(changed.preferences().noFlashing()).isTrue();
        assertThat(changed.preferences().pace()).isEqualTo(80);
        assertThat(book.notes().of("AOI")).hasSize(1);
        post("/book/pupils/AOI/edit", "name=Aoi&group-id=FRI" + USUAL);
        assertThat(pupil("AOI").preferences().noFlashing()).isFalse();
    }

    @Test
    void aNoteIsTakenOutOnlyFromThePageOfItsPupil() {
        Note note = Note.of("BEN", NOON, "of Ben");
        book.notes().keep(note);
        post("/book/pupils/AOI/notes/" + note.id() + "/remove", "");
        assertThat(book.notes().of("BEN")).containsExactly(note);
        post("/book/pupils/BEN/notes/" + note.id() + "/remove", "");
        assertThat(book.notes().of("BEN")).isEmpty();
    }

    @Test
    void aNoteTooLongComesBackWhole() {
        String words = "算".repeat(2_001);
        HttpResponse<String> reply = post("/book/pupils/AOI/notes", "note=" + encode(words));
        assertThat(reply.statusCode()).isEqualTo(400);
        assertThat(reply.body()).contains(words, "at most 2000 characters");
    }

    @Test
    void onePressNotesAPupilAndTheSamePressTakesItBack() {
        String day = "day=2026-04-13";
        post("/book/groups/TUE/attendance", day + "&late=AOI");
        post("/book/groups/TUE/attendance", day + "&rest=present");
        LocalDate monday = LocalDate.of(2026, 4, 13);
        assertThat(book.attendance().on(monday))
                .containsExactly(
                        new Attended("AOI", monday, Attended.How.LATE),
                        new Attended("BEN", monday, Attended.How.PRESENT));
        post("/book/groups/TUE/attendance", day + "&late=AOI");
        assertThat(book.attendance().of("AOI")).isEmpty();
        post("/book/groups/FRI/attendance", day + "&late=BEN");
        assertThat(book.attendance().of("BEN"))
                .extracting(Attended::how)
                .containsExactly(Attended.How.PRESENT);
    }

    @Test
    void whoHasNotBeenSeenForLongIsListedWithoutBeingErased() {
        book.work().keep(work("BEN", NOON.minusSeconds(86_400L * 800)));
        book.work().keep(work("AOI", NOON));
        assertThat(look("/book").body())
                .contains("for 24 months. They could be erased", "/book/pupils/BEN/erase")
                .doesNotContain("/book/pupils/AOI/erase");
        assertThat(post("/book/retention", "months=36").statusCode()).isEqualTo(303);
        assertThat(look("/book").body())
                .contains("for 36 months")
                .doesNotContain("/book/pupils/BEN/erase");
    }

    private Work work(String pupil, Instant at) {
        if (book.sheets().latest(1).isEmpty()) {
            book.sheets()
                    .keep(
                            new tamabako.records.KeptSheet(
                                    new tamabako.problems.Sheet("TEST", "Sums", List.of()),
                                    NOON,
                                    false));
        }
        return Work.of("TEST", Optional.of(pupil), at, List.of());
    }

    @Test
    void theFileOfAPupilIsNotNamedByTheName() {
        HttpResponse<String> json = look("/book/pupils/AOI.json");
        assertThat(json.headers().firstValue("Content-Disposition"))
                .hasValue("attachment; filename=\"pupil-AOI.json\"");
        assertThat(json.body()).contains("\"name\" : \"Aoi\"").doesNotContain("Ben");
    }

    @Test
    void aPupilWhomARoomStillNamesIsErasedOnceTheRoomLetsGo() {
        RoomLog.Entry room = new RoomLog.Entry("ROOM", "CODE", "{}", NOON);
        book.whole(() -> {
            book.rooms().open(room);
            book.rooms().append("ROOM", new RoomLog.Part(1, "{\"pupil\":\"AOI\"}"));
        });
        HttpResponse<String> refused = post("/book/pupils/AOI/erase", "name=Aoi");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("seat in a room that is open");
        assertThat(book.pupils().find("AOI")).isPresent();

        book.rooms().close("ROOM");
        assertThat(post("/book/pupils/AOI/erase", "name=Aoi").statusCode()).isEqualTo(303);
        assertThat(book.pupils().find("AOI")).isEmpty();
        assertThat(erased).containsOnly("AOI");
    }

    @Test
    void theFilesOfAGroupAreNotNamedByItAndBelongToIt() {
        for (String file : List.of("pupils.csv", "pupils.xlsx", "results.csv", "results.xlsx")) {
            HttpResponse<String> reply = look("/book/groups/TUE/" + file);
            assertThat(reply.statusCode()).isEqualTo(200);
            assertThat(reply.headers().firstValue("Content-Disposition"))
                    .hasValue("attachment; filename=\"" + file + "\"");
        }
        assertThat(look("/book/groups/TUE/pupils.csv").body()).contains("Aoi,,Tuesday", "Ben");
        assertThat(look("/book/groups/FRI/pupils.csv").body()).doesNotContain("Aoi");
        assertThat(look("/book/groups/NOBODY/pupils.csv").statusCode()).isEqualTo(404);
    }
}
