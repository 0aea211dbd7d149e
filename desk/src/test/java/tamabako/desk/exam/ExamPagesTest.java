package tamabako.desk.exam;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.desk.book.BookPages;
import tamabako.desk.web.DeskServer;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.file.Ladders;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.KeptOutcome;
import tamabako.records.Pupil;

/// Outcomes written down for a group and for one pupil, and what cannot be taken.
class ExamPagesTest {

    private static final HttpClient SENDER = HttpClient.newHttpClient();
    private static final Instant NOON = Instant.parse("2026-06-20T12:00:00Z");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 14);
    private static final String DAN = "day=2026-06-14&exam=dan-six-sections%2Fdan";
    private static final String SHEET = "day=2026-06-14&exam=abacus-one-sheet%2F3";

    @TempDir private Path folder;

    private ClassBook book;
    private DeskServer desk;

    @BeforeEach
    void open() {
        book = ClassBook.open(folder.resolve("book.sqlite"));
        book.groups().keep(new Group("TUE", "Tuesday", false));
        book.pupils().keep(new Pupil("AOI", "TUE", "Aoi", Locale.JAPANESE, false));
        book.pupils().keep(new Pupil("BEN", "TUE", "Ben", Locale.ENGLISH, false));
        InstantSource clock = InstantSource.fixed(NOON);
        desk =
                DeskServer.start(
                        InetAddress.getLoopbackAddress(),
                        0,
                        List.of(
                                new BookPages(book, clock, ZoneOffset.UTC, List.of()),
                                new ExamPages(book, clock, ZoneOffset.UTC)));
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

    private HttpResponse<String> post(String path, String form) {
        return send(
                at(path).header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(form)));
    }

    private List<ExamOutcome> of(String pupil) {
        return book.exams().of(pupil).stream().map(KeptOutcome::outcome).toList();
    }

    private static ExamOutcome outcome(
            String ladder,
            String grade,
            Came came,
            Optional<String> rank,
            Map<String, Integer> of) {
        return new ExamOutcome(DAY, ladder, grade, came, rank, of);
    }

    @Test
    void aWholeGroupIsWrittenDownAtOnceCorrectedAndTakenOutAgain() {
        HttpResponse<String> kept =
                post(
                        "/book/groups/TUE/exams",
                        SHEET + "&came-AOI=passed&points-AOI-columns=%EF%BC%980&came-BEN=not-sat");
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(of("AOI"))
                .containsExactly(
                        outcome(
                                "abacus-one-sheet",
                                "3",
                                Came.PASSED,
                                Optional.empty(),
                                Map.of("columns", 80)));
        assertThat(of("BEN")).extracting(ExamOutcome::came).containsExactly(Came.NOT_SAT);
        String shown = send(at(kept.headers().firstValue("Location").orElseThrow())).body();
        assertThat(shown).contains("Kept: 1 passed, 0 not passed, 1 not sat.", "value=\"80\"");
        assertThat(shown).contains("1 of 1 passed");

        post("/book/groups/TUE/exams", SHEET + "&came-AOI=not-passed&came-BEN=");
        assertThat(of("AOI")).extracting(ExamOutcome::came).containsExactly(Came.NOT_PASSED);
        assertThat(of("BEN")).isEmpty();
    }

    @Test
    void theDanThatWasReachedIsChosenOrToldByThePoints() {
        StringBuilder points = new StringBuilder();
        var dan = Ladders.ladder("dan-six-sections").orElseThrow().grade("dan").orElseThrow();
        dan.sections()
                .forEach(section -> points.append("&points-BEN-%s=125".formatted(section.id())));

        assertThat(post("/book/groups/TUE/exams", DAN + "&came-AOI=rank:3" + points).statusCode())
                .isEqualTo(303);

        assertThat(of("AOI"))
                .extracting(ExamOutcome::came, ExamOutcome::rank)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(Came.PASSED, Optional.of("3")));
        assertThat(dan.pass()).isInstanceOf(Pass.ByScore.class);
        assertThat(of("BEN")).extracting(ExamOutcome::rank).containsExactly(Optional.of("2"));
        String shown = send(at("/book/pupils/AOI/exams?" + DAN)).body();
        assertThat(shown).contains("<option value=\"rank:3\" selected");
        assertThat(shown).doesNotContain("Ben");
    }

    @Test
    void onePupilIsWrittenDownAloneAndTheOthersStay() {
        post("/book/groups/TUE/exams", SHEET + "&came-AOI=passed&came-BEN=passed");

        assertThat(post("/book/pupils/AOI/exams", SHEET + "&came-AOI=not-passed").statusCode())
                .isEqualTo(303);

        assertThat(of("AOI")).extracting(ExamOutcome::came).containsExactly(Came.NOT_PASSED);
        assertThat(of("BEN")).extracting(ExamOutcome::came).containsExactly(Came.PASSED);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    came-AOI=won                              | Choose one of these.
                    came-AOI=rank:3                           | Choose one of these.
                    came-AOI=passed&points-AOI-columns=101    | write points from 0 to 100
                    came-AOI=passed&points-AOI-columns=many   | write points from 0 to 100
                    points-AOI-columns=80                     | Choose the outcome, or give the points
                    came-AOI=not-sat&points-AOI-columns=80    | has no points
                    """)
    void aLineThatCannotBeTakenIsNamedAndNothingIsKept(String line, String said) {
        HttpResponse<String> reply =
                post("/book/groups/TUE/exams", SHEET + "&came-BEN=passed&" + line);

        assertThat(reply.statusCode()).isEqualTo(400);
        assertThat(reply.body()).contains("aria-invalid=\"true\"").containsIgnoringCase(said);
        assertThat(reply.body()).contains("<option value=\"passed\" selected");
        assertThat(of("AOI")).isEmpty();
        assertThat(of("BEN")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    day=2026-06-21&exam=abacus-one-sheet%2F3 | 2026-06-20
                    day=14+June&exam=abacus-one-sheet%2F3    | 2026-06-20
                    day=2026-06-14&exam=abacus-one-sheet%2F99 | Choose a grade from the list.
                    day=2026-06-14&exam=no-ladder%2F3         | Choose a grade from the list.
                    day=2026-06-14&exam=                      | Choose a grade from the list.
                    """)
    void anExamThatIsNoneIsNamed(String exam, String said) {
        HttpResponse<String> reply = post("/book/groups/TUE/exams", exam + "&came-AOI=passed");

        assertThat(reply.statusCode()).isEqualTo(400);
        assertThat(reply.body()).contains(said);
        assertThat(send(at("/book/groups/TUE/exams?" + exam)).body()).contains(said);
        assertThat(of("AOI")).isEmpty();
    }

    @Test
    void whoIsNotInTheBookHasNoPage() {
        assertThat(send(at("/book/groups/NOBODY/exams")).statusCode()).isEqualTo(404);
        assertThat(post("/book/pupils/NOBODY/exams", SHEET).statusCode()).isEqualTo(404);
    }
}
