package tamabako.desk.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.desk.mark.MarkPages;
import tamabako.desk.web.DeskServer;
import tamabako.problems.Column;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.LadderTexts;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.marking.Written;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;
import tamabako.records.ClassBook;
import tamabako.records.Draft;
import tamabako.records.Group;
import tamabako.records.Identity;
import tamabako.records.KeptPapers;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// Paper work as a browser without scripts sends it, as the page's script does, and as nobody
/// should.
class EntryPagesTest {

    private static final HttpClient SENDER = HttpClient.newHttpClient();
    private static final Instant NOON = Instant.parse("2026-04-14T12:00:00Z");

    @TempDir private Path folder;

    private ClassBook book;
    private DeskServer desk;

    @BeforeEach
    void open() {
        book = ClassBook.open(folder.resolve("book.sqlite"));
        InstantSource clock = InstantSource.fixed(NOON);
        desk =
                DeskServer.start(
                        InetAddress.getLoopbackAddress(),
                        0,
                        List.of(
                                new EntryPages(book, clock, ZoneOffset.UTC),
                                new MarkPages(book, clock, ZoneOffset.UTC),
                                new tamabako.desk.book.BookPages(
                                        book, clock, ZoneOffset.UTC, List.of())));
        book.groups().keep(new Group("TUE", "Tuesday", false));
        book.pupils().keep(new Pupil("AOI", "TUE", "Aoi <b>", Locale.JAPANESE, false));
        book.pupils().keep(new Pupil("BEN", "TUE", "Ben", Locale.ENGLISH, false));
        Sheet sheet =
                new Sheet(
                        "K7QM-29XF",
                        "Three sums",
                        List.of(
                                column("1", "34", "78"),
                                column("2", "9731", "269"),
                                column("3", "23", "-61")));
        book.sheets().keep(new KeptSheet(sheet, NOON, false));
    }

    @AfterEach
    void close() {
        desk.close();
        book.close();
    }

    private static Column column(String id, String... rows) {
        return new Column(id, Stream.of(rows).map(BigDecimal::new).toList(), Terms.PLAIN);
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return SENDER.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException failed) {
            throw new AssertionError(failed);
        }
    }

    private HttpResponse<String> look(String path) {
        return send(HttpRequest.newBuilder(URI.create(desk.url()).resolve(path)));
    }

    private HttpResponse<String> post(String path, String form) {
        return send(
                HttpRequest.newBuilder(URI.create(desk.url()).resolve(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(form)));
    }

    private static final String LINE = "/entry/K7QM-29XF/AOI";

    @Test
    void aLineIsKeptAsThePupilsWorkWithMarksAndTime() {
        String id = Identity.fresh();
        HttpResponse<String> reply =
                post(LINE, "group=TUE&work=" + id + "&a1=112&a2=10000&a3=-83&took=4%3A30");

        assertThat(reply.statusCode()).isEqualTo(303);
        assertThat(reply.headers().firstValue("Location"))
                .hasValue("/entry/K7QM-29XF?group=TUE#line-AOI");
        Work kept = book.work().of("AOI").getFirst();
        assertThat(kept.answers())
                .extracting(MarkedAnswer::mark)
                .containsExactly("right", "right", "wrong");
        assertThat(kept.took()).hasValue(Duration.ofSeconds(270));
        assertThat(kept.handedAt()).isEqualTo(NOON);
        assertThat(look("/entry/K7QM-29XF?group=TUE").body())
                .contains("2 of 3 right", "/marked/" + id, "Aoi &lt;b&gt;")
                .doesNotContain("Aoi <b>");

        post(LINE, "group=TUE&work=" + id + "&a1=112&a2=10000&a3=-83&took=4%3A30");
        assertThat(book.work().of("AOI")).containsExactly(kept);
    }

    @Test
    void inAnExamCommasAreNeeded() {
        post(LINE, "rules=strict&work=" + Identity.fresh() + "&a1=112&a2=10000");
        assertThat(book.work().of("AOI").getFirst().answers())
                .extracting(MarkedAnswer::mark)
                .containsExactly("right", "wrong-form", "empty");
    }

    @Test
    void aLineIsCorrectedLaterAndKeepsItsDayAndTheTimesOfItsAnswers() {
        Instant before = NOON.minusSeconds(86_400);
        Work work =
                Work.of(
                        "K7QM-29XF",
                        Optional.of("AOI"),
                        before,
                        List.of(
                                new MarkedAnswer(
                                        "12", "wrong", Optional.of(Duration.ofMillis(8400))),
                                new MarkedAnswer("10000", "right"),
                                new MarkedAnswer("", "empty")));
        book.work().keep(work);
        assertThat(look("/entry/K7QM-29XF?group=TUE&correct=" + work.id()).body())
                .contains("value=\"12\"", "value=\"" + work.id() + "\"");

        post(LINE, "work=" + work.id() + "&a1=112&a2=10000&a3=-38");

        Work corrected = book.work().of("AOI").getFirst();
        assertThat(book.work().of("AOI")).hasSize(1);
        assertThat(corrected.handedAt()).isEqualTo(before);
        assertThat(corrected.right()).isEqualTo(3);
        assertThat(corrected.answers().getFirst().took()).hasValue(Duration.ofMillis(8400));
    }

    @Test
    void workedAgainIsFurtherWork() {
        post(LINE, "work=" + Identity.fresh() + "&a1=12");
        assertThat(look("/entry/K7QM-29XF?group=TUE&again=AOI").body())
                .contains("action=\"" + LINE + "\"");
        post(LINE, "work=" + Identity.fresh() + "&a1=112");
        assertThat(book.work().of("AOI")).hasSize(2);
    }

    @Test
    void whatIsTypedIsMarkedAtOnceAndStillThereAfterReloading() {
        HttpResponse<String> marks = post(LINE + "/draft", "a1=112&a2=&a3=%E4%B8%83&took=4");
        assertThat(marks.body())
                .contains("[\"right\",\"empty\",\"unclear\"]", "1 of 3 right", "cannot be read");
        assertThat(book.drafts().of("AOI"))
                .containsExactly(new Draft("K7QM-29XF", "AOI", List.of("112", "", "七"), "4"));
        assertThat(look("/entry/K7QM-29XF?group=TUE").body())
                .contains("value=\"七\"", "not kept yet");
        assertThat(book.work().of("AOI")).isEmpty();

        post(LINE, "work=" + Identity.fresh() + "&a1=112&a3=-38");
        assertThat(book.drafts().of("AOI")).isEmpty();
        post("/entry/K7QM-29XF/BEN/draft", "a1=1");
        post("/entry/K7QM-29XF/BEN/draft", "a1=");
        assertThat(book.drafts().of("BEN")).isEmpty();
    }

    @Test
    void aFormOfAPaperIsFoundByItsPrintedNumberAndEntered() {
        Ladder ladder = Ladders.ladder("first-steps").orElseThrow();
        PaperMaker maker = PaperMaker.of(ladder.id(), ladder.grades().getFirst());
        PaperMade made = maker.make(PaperId.draw(() -> 77L), 1, List.of());
        Paper paper = ((PaperMade.Found) made).paper();
        book.papers()
                .keep(
                        new KeptPapers(
                                "SETT-SETT",
                                LadderTexts.text(ladder.id()),
                                NOON,
                                List.of(paper)));
        String typed = paper.id().toLowerCase(Locale.ROOT).replace("-", "");

        assertThat(look("/entry?number=" + typed + "&group=TUE").headers().firstValue("Location"))
                .hasValue("/entry/" + paper.id() + "?group=TUE");
        HttpResponse<String> grid = look("/entry/" + paper.id() + "?group=TUE");
        assertThat(grid.body())
                .contains("name=\"a" + paper.problems().size() + "\"")
                .contains("form A");
        String answer = Written.of(paper.problems().getFirst()).toString().replace(",", "");
        post("/entry/" + paper.id() + "/BEN", "work=" + Identity.fresh() + "&a1=" + answer);

        Work work = book.work().of("BEN").getFirst();
        assertThat(work.sheetId()).isEqualTo(paper.id());
        assertThat(work.answers()).hasSize(paper.problems().size());
        assertThat(work.right()).isEqualTo(1);
        assertThat(look("/marked/" + work.id()).statusCode()).isEqualTo(200);
    }

    @Test
    void aSheetIsHandedOutToAGroupAndThatIsTakenBack() {
        post("/handouts", "sheet=K7QM-29XF&group=TUE&back=entry");
        Pupil ben = book.pupils().find("BEN").orElseThrow();
        assertThat(book.handouts().of(ben)).hasSize(1);
        assertThat(look("/entry/K7QM-29XF?group=TUE").body()).contains("Handed out on");
        String id = book.handouts().of(ben).getFirst().id();
        HttpResponse<String> back =
                post("/handouts/" + id + "/remove", "sheet=%2F%2Felsewhere.example");
        assertThat(back.headers().firstValue("Location")).hasValue("/entry");
        assertThat(book.handouts().of(ben)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    /entry/NO-SUCH               | 404 | There is no sheet
                    /entry/K7QM-29XF?group=NONE  | 404 | Whose papers are these
                    /entry/K7QM-29XF             | 200 | Whose papers are these
                    /entry?number=NO-SUCH        | 404 | goes by the number NO-SUCH
                    /entry?number=%3Cb%3E        | 404 | goes by the number &lt;b&gt;
                    /entry?number=k7qm29xf       | 303 | ''
                    /entry/K7QM-29XF/AOI         | 405 | does not take that kind of request
                    """)
    void whatCannotBeShownIsTold(String path, int status, String told) {
        HttpResponse<String> reply = look(path);
        assertThat(reply.statusCode()).isEqualTo(status);
        assertThat(reply.body()).contains(told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    /entry/NO-SUCH/AOI        | a1=1                 | 404 | There is no sheet
                    /entry/K7QM-29XF/NOBODY   | a1=1                 | 404 | not in the class book
                    /entry/K7QM-29XF/AOI      | group=TUE&a1=        | 400 | No answer has been typed in this line
                    /entry/K7QM-29XF/AOI      | group=TUE&a1=5&took=soon | 400 | The time "soon" cannot be read
                    /entry/K7QM-29XF/AOI      | group=TUE&a1=5&took=1:99 | 400 | The time "1:99" cannot be read
                    /entry/K7QM-29XF/AOI      | a1=5&work=mine       | 400 | belongs to other work
                    /entry/K7QM-29XF/AOI      | a1=5&work=BENS       | 400 | belongs to other work
                    /handouts                 | sheet=K7QM-29XF&group=NONE | 404 | group is not in the class book
                    /handouts                 | sheet=NO-SUCH&group=TUE | 404 | There is no sheet
                    """)
    void aLineThatCannotBeKeptIsTold(String path, String form, int status, String told) {
        Work bens =
                new Work("BENS", "K7QM-29XF", Optional.of("BEN"), NOON, List.of(), Optional.empty());
        book.work().keep(bens);
        HttpResponse<String> reply = post(path, form);
        assertThat(reply.statusCode()).isEqualTo(status);
        assertThat(reply.body()).contains(told);
        assertThat(book.work().latest(9)).containsExactly(bens);
        if (form.startsWith("group") && form.contains("a1=5")) {
            assertThat(reply.body()).contains("value=\"5\"");
        }
    }

    @Test
    void anAnswerLongerThanAnyIsToldAndKeptOutOfDrafts() {
        String nines = "9".repeat(5_000);
        assertThat(post(LINE + "/draft", "a2=" + nines).statusCode()).isEqualTo(200);
        assertThat(book.drafts().of("AOI")).isEmpty();
        assertThat(post(LINE, "group=TUE&a2=" + nines).body()).contains("Answer 2 is longer");
    }
}
