package tamabako.desk.room.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Round;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Turn.Move;

/// What pupils may not do while problems are called or shown one after another, tried over HTTP.
class TurnRefusalsTest {

    @RegisterExtension final RoomDesk desk = new RoomDesk();

    private RoomState room(Round round) {
        return desk.room(round, new Expected("CALM", "静", "ja", 0, "", true), 9);
    }

    private void move(RoomState room, Move move, int problem) {
        desk.ask(room, new RoomCommand.TakeTurn(move, problem, desk.millis()));
    }

    @Test
    void anAnswerBeforeTheLastWordIsRefused() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = desk.sit(room, "Mei");
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"refused\":\"not-begun\"");
        move(room, Move.BEGIN, 0);
        desk.pass(Duration.ofMinutes(5));
        HttpResponse<String> early = mei.answer(1, 1, "0", "46");
        assertThat(early.statusCode()).isEqualTo(409);
        assertThat(early.body()).contains("\"refused\":\"early\"").contains("\"taken\":0");
        move(room, Move.OPEN, 0);
        assertThat(mei.answer(1, 1, "1", "47").body()).contains("\"refused\":\"early\"");
        assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        assertThat(desk.seat(room, 1).right()).isEqualTo(1);
    }

    @Test
    void anAnswerForAnotherSeatIsRefusedAndOneSentAgainCountsOnce() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = desk.sit(room, "Mei");
        Tablet ren = desk.sit(room, "Ren");
        move(room, Move.BEGIN, 0);
        move(room, Move.OPEN, 0);
        ren.cookie = ren.cookie.replace("seat=2.", "seat=1.");
        assertThat(ren.answer(1, 1, "0", "46").statusCode()).isEqualTo(403);
        assertThat(desk.seat(room, 1).written()).isZero();
        mei.answer(1, 1, "0", "46");
        Seat once = desk.seat(room, 1);
        assertThat(mei.answer(1, 1, "0", "99").body()).contains("\"taken\":1");
        assertThat(desk.seat(room, 1)).isEqualTo(once);
    }

    @Test
    void anAnswerAfterItWasToldWaitsForTheTeacher() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = desk.sit(room, "Mei");
        move(room, Move.BEGIN, 0);
        move(room, Move.OPEN, 0);
        move(room, Move.REVEAL, 0);
        assertThat(mei.get(mei.seat + "/state").body()).contains("\"answer\":\"46\"");
        desk.pass(Duration.ofMillis(3_001));
        for (int i = 0; i < 2; i++) {
            assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        }
        assertThat(desk.seat(room, 1).right()).isZero();
        assertThat(desk.seat(room, 1).later()).hasSize(1);
        assertThat(mei.get(mei.seat + "/state").body()).contains("\"later\":1");
    }

    @Test
    void nobodySeesTheNumbersOrTheAnswerBeforehand() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = desk.sit(room, "Mei");
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
        Tablet mei = desk.sit(room, "Mei");
        for (String button : List.of("begin", "open", "reveal", "spoil")) {
            assertThat(
                            mei.post("/room/" + room.id() + "/do", "do", button, "problem", "0")
                                    .statusCode())
                    .isEqualTo(403);
        }
        for (String page : List.of("/call", "/call/part", "/call/sound?n=1")) {
            assertThat(mei.get("/room/" + room.id() + page).statusCode()).as(page).isEqualTo(403);
        }
        assertThat(desk.state(room).turn().problem()).isEqualTo(-1);
    }

    @Test
    void calledRoundsGoOnAfterTheProgramStopped() {
        RoomState room = room(Lesson.called(3));
        Tablet mei = desk.sit(room, "Mei");
        move(room, Move.BEGIN, 0);
        move(room, Move.OPEN, 0);
        mei.answer(1, 1, "0", "46");
        RoomState before = desk.state(room);
        desk.stopAndStart();
        Optional<RoomState> after = desk.rooms().find(room.id());
        assertThat(after).contains(before);
        Tablet again = desk.tablet();
        again.cookie = mei.cookie;
        again.seat = mei.seat;
        assertThat(again.answer(1, 1, "0", "46").body()).contains("\"taken\":1");
        move(room, Move.REVEAL, 0);
        move(room, Move.BEGIN, 1);
        move(room, Move.OPEN, 1);
        assertThat(again.answer(2, 1, "1", "47").statusCode()).isEqualTo(200);
        desk.ask(room, new RoomCommand.End(desk.millis()));
        assertThat(desk.book().work().latest(5))
                .singleElement()
                .satisfies(work ->
                        assertThat(work.answers())
                                .extracting(answer -> answer.written() + " " + answer.mark())
                                .containsExactly("46 right", "47 right", " empty"));
    }

    @Test
    void tabletsGetTheNumbersWhenTheTeacherBeginsAndAnswerAfterTheLast() {
        RoomState room = room(Lesson.shown(2, Activity.Screen.TABLETS));
        Tablet mei = desk.sit(room, "Mei");
        assertThat(mei.get(mei.seat + "/showing").statusCode()).isEqualTo(409);
        move(room, Move.BEGIN, 0);
        HttpResponse<String> numbers = mei.get(mei.seat + "/showing");
        assertThat(numbers.body())
                .contains("\"texts\":[\"1\",\"40\",\"5\"]")
                .contains("\"period\":500.0");
        assertThat(numbers.headers().firstValue("Cache-Control")).contains("no-store");
        desk.pass(Duration.ofMillis(3_000 + 2 * 500 + 350 - 1));
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"refused\":\"early\"");
        desk.pass(Duration.ofMillis(1));
        assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        assertThat(desk.seat(room, 1).right()).isEqualTo(1);
    }

    @Test
    void aShowingThatWentWrongDoesNotCount() {
        RoomState room = room(Lesson.shown(2, Activity.Screen.TABLETS));
        Tablet mei = desk.sit(room, "Mei");
        Tablet ren = desk.sit(room, "Ren");
        move(room, Move.BEGIN, 0);
        desk.pass(Duration.ofSeconds(9));
        Tablet other = desk.tablet();
        other.cookie = ren.cookie.replace("seat=2.", "seat=1.");
        assertThat(ran(other, mei.seat, "0").statusCode()).isEqualTo(409);
        assertThat(ran(mei, mei.seat, "x").statusCode()).isEqualTo(409);
        assertThat(ran(mei, mei.seat, "0").statusCode()).isEqualTo(200);
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"refused\":\"not-counted\"");
        assertThat(ren.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        desk.ask(room, new RoomCommand.HandIn(1, SeatPass.key("no"), 1, 1, 0));
        desk.ask(room, new RoomCommand.End(desk.millis()));
        assertThat(desk.book().work().latest(5)).hasSize(1);
    }

    private static HttpResponse<String> ran(Tablet tablet, String seat, String problem) {
        return tablet.post(seat + "/ran", "run", "1", "problem", problem, "exact", "0");
    }

    @Test
    void onlyTheProjectorGetsTheNumbersThatItShows() {
        RoomState room = room(Lesson.shown(2, Activity.Screen.BOARD));
        Tablet mei = desk.sit(room, "Mei");
        move(room, Move.BEGIN, 0);
        assertThat(mei.get(mei.seat + "/showing").statusCode()).isEqualTo(409);
        assertThat(mei.get("/room/" + room.id() + "/board/showing").statusCode()).isEqualTo(403);
        desk.pass(Duration.ofMinutes(5));
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"refused\":\"early\"");
        move(room, Move.OPEN, 0);
        assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
    }

    @Test
    void aPupilWhoIsToSeeNumbersSlowlyGetsThemSoAndNothingSaysWhy() {
        RoomState room = room(Lesson.shown(2, Activity.Screen.BOARD));
        Tablet shizuka = desk.tablet();
        shizuka.post("/join/" + room.code(), "pupil", "CALM");
        Tablet mei = desk.sit(room, "Mei");
        move(room, Move.BEGIN, 0);
        assertThat(shizuka.get(shizuka.seat + "/showing").body()).contains("\"period\":1000.0");
        assertThat(mei.get(mei.seat + "/showing").statusCode()).isEqualTo(409);
        assertThat(shizuka.get(shizuka.seat).body()).doesNotContainIgnoringCase("calm");
    }
}
