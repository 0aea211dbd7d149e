package tamabako.desk.room.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Round;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Setup;
import tamabako.desk.room.Turn.Move;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.DeskServer;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;

/// What pupils may not do while problems are called or shown one after another, tried over HTTP.
class TurnRefusalsTest {

    @TempDir private Path folder = Path.of("");

    private final AtomicReference<Instant> now =
            new AtomicReference<>(Instant.parse("2026-04-14T07:00:00Z"));
    private final InstantSource clock = now::get;

    private Parts parts = Parts.NONE;

    private record Parts(ClassBook book, Rooms rooms, Live live, DeskServer server) {
        @SuppressWarnings("NullAway") // replaced before every test
        static final Parts NONE = new Parts(null, null, null, null);
    }

    @BeforeEach
    void open() {
        ClassBook book = ClassBook.open(folder.resolve("book.sqlite"));
        Sheet sheet = new Sheet("SHEET", "Sheet", Lesson.problems(3));
        if (book.sheets().find("SHEET").isEmpty()) {
            book.sheets().keep(new KeptSheet(sheet, clock.instant(), false));
        }
        Rooms rooms = new Rooms(book, clock);
        Live live = new Live(rooms, clock);
        DeskServer server =
                DeskServer.start(
                        InetAddress.getLoopbackAddress(),
                        0,
                        List.of(new RoomPages(book, rooms, live, clock)),
                        RoomRefusalsTest.STRANGERS);
        parts = new Parts(book, rooms, live, server);
    }

    @AfterEach
    void close() {
        parts.live().close();
        parts.server().close();
        parts.rooms().close();
        parts.book().close();
    }

    private RoomState room(Round round) {
        return parts.rooms()
                .open(
                        new Setup(
                                "Lesson",
                                List.of(round),
                                List.of(new Expected("CALM", "静", "ja", 0, "", true)),
                                true,
                                true,
                                9));
    }

    private Tablet sit(RoomState room, String name) {
        Tablet tablet = new Tablet(parts.server().url());
        tablet.post("/join/" + room.code(), "alias", name);
        assertThat(tablet.get(tablet.seat).statusCode()).isEqualTo(200);
        return tablet;
    }

    private void move(RoomState room, Move move, int problem) {
        parts.rooms().ask(room.id(), new RoomCommand.TakeTurn(move, problem, clock.millis()));
    }

    private void pass(Duration time) {
        now.updateAndGet(before -> before.plus(time));
    }

    private Seat seat(RoomState room, int number) {
        return parts.rooms().find(room.id()).orElseThrow().seats().find(number).orElseThrow();
    }

    @Test
    void anAnswerBeforeTheLastWordIsRefused() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = sit(room, "Mei");
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"refused\":\"not-begun\"");
        move(room, Move.BEGIN, 0);
        pass(Duration.ofMinutes(5));
        HttpResponse<String> early = mei.answer(1, 1, "0", "46");
        assertThat(early.statusCode()).isEqualTo(409);
        assertThat(early.body()).contains("\"refused\":\"early\"").contains("\"taken\":0");
        move(room, Move.OPEN, 0);
        assertThat(mei.answer(1, 1, "1", "47").body()).contains("\"refused\":\"early\"");
        assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        assertThat(seat(room, 1).right()).isEqualTo(1);
    }

    @Test
    void anAnswerForAnotherSeatIsRefusedAndOneSentAgainCountsOnce() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = sit(room, "Mei");
        Tablet ren = sit(room, "Ren");
        move(room, Move.BEGIN, 0);
        move(room, Move.OPEN, 0);
        ren.cookie = ren.cookie.replace("seat=2.", "seat=1.");
        assertThat(ren.answer(1, 1, "0", "46").statusCode()).isEqualTo(403);
        assertThat(seat(room, 1).written()).isZero();
        mei.answer(1, 1, "0", "46");
        Seat once = seat(room, 1);
        assertThat(mei.answer(1, 1, "0", "99").body()).contains("\"taken\":1");
        assertThat(seat(room, 1)).isEqualTo(once);
    }

    @Test
    void anAnswerAfterItWasToldWaitsForTheTeacher() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = sit(room, "Mei");
        move(room, Move.BEGIN, 0);
        move(room, Move.OPEN, 0);
        move(room, Move.REVEAL, 0);
        assertThat(mei.get(mei.seat + "/state").body()).contains("\"answer\":\"46\"");
        pass(Duration.ofMillis(3_001));
        for (int i = 0; i < 2; i++) {
            assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        }
        assertThat(seat(room, 1).right()).isZero();
        assertThat(seat(room, 1).later()).hasSize(1);
        assertThat(mei.get(mei.seat + "/state").body()).contains("\"later\":1");
    }

    @Test
    void nobodySeesTheNumbersOrTheAnswerBeforehand() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = sit(room, "Mei");
        assertThat(mei.get(mei.seat + "/problems").statusCode()).isEqualTo(409);
        move(room, Move.BEGIN, 0);
        move(room, Move.OPEN, 0);
        mei.answer(1, 1, "0", "45");
        for (String page : List.of("", "/state", "/problems")) {
            String body = mei.get(mei.seat + page).body();
            // Identities are drawn by chance, figures and all.
            assertThat(body.replace(room.id(), "").replace(room.code(), ""))
                    .as(page)
                    .doesNotContain(">40<")
                    .doesNotContain("46")
                    .doesNotContain("[\"wrong");
        }
        move(room, Move.REVEAL, 0);
        assertThat(mei.get(mei.seat + "/state").body())
                .contains("\"marks\":[\"wrong\"]")
                .contains("\"answer\":\"46\"")
                .doesNotContain("47");
    }

    @Test
    void aPupilNeitherLeadsNorHearsTheCallersPage() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = sit(room, "Mei");
        for (String button : List.of("begin", "open", "reveal", "spoil")) {
            assertThat(
                            mei.post("/room/" + room.id() + "/do", "do", button, "problem", "0")
                                    .statusCode())
                    .isEqualTo(403);
        }
        for (String page : List.of("/call", "/call/part", "/call/sound?n=1")) {
            assertThat(mei.get("/room/" + room.id() + page).statusCode()).as(page).isEqualTo(403);
        }
        assertThat(parts.rooms().find(room.id()).orElseThrow().turn().problem()).isEqualTo(-1);
    }

    @Test
    void calledRoundsGoOnAfterTheProgramStopped() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = sit(room, "Mei");
        move(room, Move.BEGIN, 0);
        move(room, Move.OPEN, 0);
        mei.answer(1, 1, "0", "46");
        RoomState before = parts.rooms().find(room.id()).orElseThrow();
        close();
        open();
        Optional<RoomState> after = parts.rooms().find(room.id());
        assertThat(after).contains(before);
        Tablet again = new Tablet(parts.server().url());
        again.cookie = mei.cookie;
        again.seat = mei.seat;
        assertThat(again.answer(1, 1, "0", "46").body()).contains("\"taken\":1");
        move(room, Move.REVEAL, 0);
        move(room, Move.BEGIN, 1);
        move(room, Move.OPEN, 1);
        assertThat(again.answer(2, 1, "1", "47").statusCode()).isEqualTo(200);
        parts.rooms().ask(room.id(), new RoomCommand.End(clock.millis()));
        assertThat(parts.book().work().latest(5))
                .singleElement()
                .satisfies(work ->
                        assertThat(work.answers())
                                .extracting(answer -> answer.written() + " " + answer.mark())
                                .containsExactly("46 right", "47 right", " empty"));
    }

    @Test
    void tabletsGetTheNumbersWhenTheTeacherBeginsAndAnswerAfterTheLast() {
        RoomState room = room(Lesson.shown(2, Activity.Screen.TABLETS));
        Tablet mei = sit(room, "Mei");
        assertThat(mei.get(mei.seat + "/showing").statusCode()).isEqualTo(409);
        move(room, Move.BEGIN, 0);
        HttpResponse<String> numbers = mei.get(mei.seat + "/showing");
        assertThat(numbers.body())
                .contains("\"texts\":[\"1\",\"40\",\"5\"]")
                .contains("\"period\":500.0");
        assertThat(numbers.headers().firstValue("Cache-Control")).contains("no-store");
        pass(Duration.ofMillis(3_000 + 2 * 500 + 350 - 1));
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"refused\":\"early\"");
        pass(Duration.ofMillis(1));
        assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        assertThat(seat(room, 1).right()).isEqualTo(1);
    }

    @Test
    void aShowingThatWentWrongDoesNotCount() {
        RoomState room = room(Lesson.shown(2, Activity.Screen.TABLETS));
        Tablet mei = sit(room, "Mei");
        Tablet ren = sit(room, "Ren");
        move(room, Move.BEGIN, 0);
        pass(Duration.ofSeconds(9));
        Tablet other = new Tablet(parts.server().url());
        other.cookie = ren.cookie.replace("seat=2.", "seat=1.");
        assertThat(ran(other, mei.seat, "0").statusCode()).isEqualTo(409);
        assertThat(ran(mei, mei.seat, "x").statusCode()).isEqualTo(409);
        assertThat(ran(mei, mei.seat, "0").statusCode()).isEqualTo(200);
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"refused\":\"not-counted\"");
        assertThat(ren.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        parts.rooms().ask(room.id(), new RoomCommand.HandIn(1, SeatPass.key("no"), 1, 1, 0));
        parts.rooms().ask(room.id(), new RoomCommand.End(clock.millis()));
        assertThat(parts.book().work().latest(5)).hasSize(1);
    }

    private static HttpResponse<String> ran(Tablet tablet, String seat, String problem) {
        return tablet.post(seat + "/ran", "run", "1", "problem", problem, "exact", "0");
    }

    @Test
    void onlyTheProjectorGetsTheNumbersThatItShows() {
        RoomState room = room(Lesson.shown(2, Activity.Screen.BOARD));
        Tablet mei = sit(room, "Mei");
        move(room, Move.BEGIN, 0);
        assertThat(mei.get(mei.seat + "/showing").statusCode()).isEqualTo(409);
        assertThat(mei.get("/room/" + room.id() + "/board/showing").statusCode()).isEqualTo(403);
        pass(Duration.ofMinutes(5));
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"refused\":\"early\"");
        move(room, Move.OPEN, 0);
        assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
    }

    @Test
    void aPupilWhoIsToSeeNumbersSlowlyGetsThemSoAndNothingSaysWhy() {
        RoomState room = room(Lesson.shown(2, Activity.Screen.BOARD));
        Tablet shizuka = new Tablet(parts.server().url());
        shizuka.post("/join/" + room.code(), "pupil", "CALM");
        Tablet mei = sit(room, "Mei");
        move(room, Move.BEGIN, 0);
        assertThat(shizuka.get(shizuka.seat + "/showing").body()).contains("\"period\":1000.0");
        assertThat(mei.get(mei.seat + "/showing").statusCode()).isEqualTo(409);
        assertThat(shizuka.get(shizuka.seat).body()).doesNotContainIgnoringCase("calm");
    }
}
