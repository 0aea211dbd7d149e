package tamabako.desk.room.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Lesson;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;

/// What pupils and strangers may not do, tried over HTTP by hand.
class RoomRefusalsTest {

    @RegisterExtension final RoomDesk desk = new RoomDesk();

    private RoomState room(int most, String pin) {
        return desk.room(
                Lesson.round("SHEET", 3, Optional.of(Duration.ofMinutes(1))),
                new Expected("PUPIL", "葵", "ja", 0, pin, false),
                most);
    }

    private void start(RoomState room) {
        desk.ask(room, new RoomCommand.Start(desk.millis()));
    }

    @Test
    void guessesOfJoinCodesAreStoppedAndTheRoomGoesOn() {
        RoomState room = room(5, "");
        Tablet seated = desk.sit(room, "Mei");
        Tablet guesser = desk.tablet();
        for (int i = 0; i < 30; i++) {
            HttpResponse<String> wrong = guesser.post("/join", "code", "22222" + (char) ('A' + i));
            assertThat(wrong.statusCode()).isEqualTo(404);
            assertThat(wrong.body()).contains("No room has this code");
        }
        assertThat(guesser.post("/join", "code", room.code()).statusCode()).isEqualTo(429);
        assertThat(guesser.get("/join/" + room.code()).statusCode()).isEqualTo(429);
        assertThat(guesser.post("/join/" + room.code(), "alias", "x").statusCode()).isEqualTo(429);
        start(room);
        assertThat(seated.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
        desk.pass(Duration.ofSeconds(61));
        assertThat(guesser.get("/join/" + room.code()).statusCode()).isEqualTo(200);
    }

    @Test
    void guessesOfPinsAreStopped() {
        RoomState room = room(5, "4711");
        Tablet guesser = desk.tablet();
        String sit = "/join/" + room.code();
        for (int i = 0; i < 5; i++) {
            HttpResponse<String> wrong = guesser.post(sit, "pupil", "PUPIL", "pin", "000" + i);
            assertThat(wrong.statusCode()).isEqualTo(403);
            assertThat(wrong.body()).contains("These figures do not belong to this name");
        }
        assertThat(guesser.post(sit, "pupil", "PUPIL", "pin", "4711").statusCode()).isEqualTo(429);
        assertThat(guesser.post(sit + "/move", "pupil", "PUPIL", "pin", "4711").statusCode())
                .isEqualTo(429);
        assertThat(desk.state(room).seats().count()).isZero();
        desk.pass(Duration.ofSeconds(61));
        assertThat(guesser.post(sit, "pupil", "PUPIL", "pin", "4711").statusCode()).isEqualTo(303);
    }

    @Test
    void nobodyWritesForAnotherSeat() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        Tablet ren = desk.sit(room, "Ren");
        start(room);
        ren.cookie = ren.cookie.replace("seat=2.", "seat=1.");
        assertThat(ren.answer(1, 1, "0", "46").statusCode()).isEqualTo(403);
        assertThat(ren.get(ren.seat).statusCode()).isEqualTo(403);
        assertThat(ren.get(ren.seat + "/state").statusCode()).isEqualTo(403);
        assertThat(ren.get(ren.seat + "/stream").statusCode()).isEqualTo(403);
        assertThat(ren.get(ren.seat + "/problems").statusCode()).isEqualTo(403);
        ren.cookie = "";
        assertThat(ren.answer(1, 1, "0", "46").statusCode()).isEqualTo(403);
        ren.cookie = "seat=1." + "A".repeat(43);
        assertThat(ren.answer(1, 1, "0", "46").statusCode()).isEqualTo(403);
        assertThat(desk.state(room).seats().all().mapToLong(Seat::written).sum()).isZero();
        assertThat(mei.answer(1, 1, "0", "46").statusCode()).isEqualTo(200);
    }

    @Test
    void replayedAnswersChangeNothing() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        start(room);
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"taken\":1");
        RoomState once = desk.state(room);
        assertThat(mei.answer(1, 1, "0", "46").body()).contains("\"taken\":1");
        assertThat(mei.answer(1, 1, "0", "999").body()).contains("\"taken\":1");
        assertThat(mei.answer(1, 1, "end", "").body()).contains("\"taken\":1");
        assertThat(desk.state(room)).isEqualTo(once);
        assertThat(mei.answer(3, 1, "1", "47").body()).contains("\"refused\":\"gap\"");
        assertThat(desk.state(room)).isEqualTo(once);
    }

    @Test
    void lateAnswersAreRefusedAndLetInByTheTeacherOnce() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        start(room);
        desk.pass(Duration.ofSeconds(64));
        HttpResponse<String> late = mei.answer(1, 1, "0", "46");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("\"taken\":1").contains("\"refused\":\"late\"");
        assertThat(mei.answer(1, 1, "0", "999").statusCode()).isEqualTo(200);
        assertThat(desk.seat(room, 1).written()).isZero();
        desk.ask(room, new RoomCommand.AdmitLate(1));
        assertThat(mei.answer(1, 1, "0", "999").statusCode()).isEqualTo(200);
        assertThat(desk.seat(room, 1).right()).isEqualTo(1);
    }

    @Test
    void aPupilMarksNothingAndPressesNoButtonOfTheTeacher() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        start(room);
        HttpResponse<String> marked = mei.answer(1, 1, "0", "1", "mark", "right");
        assertThat(marked.statusCode()).isEqualTo(400);
        HttpResponse<String> timed = mei.answer(1, 1, "0", "1", "took", "10");
        assertThat(timed.statusCode()).isEqualTo(400);
        for (String button : List.of("start", "end", "add", "show-marks", "close", "new-code")) {
            assertThat(
                            mei.post("/room/" + room.id() + "/do", "do", button, "seconds", "60")
                                    .statusCode())
                    .isEqualTo(403);
        }
        assertThat(
                        mei.post("/room/" + room.id() + "/seat", "seat", "1", "do", "admit-late")
                                .statusCode())
                .isEqualTo(403);
        for (String page : List.of("", "/part", "/board", "/board/part", "/stream", "/pins")) {
            assertThat(mei.get("/room/" + room.id() + page).statusCode()).as(page).isEqualTo(403);
        }
        assertThat(desk.seat(room, 1).written()).isZero();
        assertThat(desk.state(room).marksShown()).isFalse();
    }

    @Test
    void problemsAreSeenWhenTheRoundBeginsAndAnswersNever() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        assertThat(mei.get(mei.seat + "/problems").statusCode()).isEqualTo(409);
        start(room);
        HttpResponse<String> problems = mei.get(mei.seat + "/problems");
        assertThat(problems.statusCode()).isEqualTo(200);
        assertThat(problems.headers().firstValue("Cache-Control")).contains("no-store");
        for (HttpResponse<String> page :
                List.of(problems, mei.get(mei.seat), mei.get(mei.seat + "/state"))) {
            // Identities are drawn by chance, figures and all.
            assertThat(page.body().replace(room.id(), "").replace(room.code(), ""))
                    .doesNotContain("46")
                    .doesNotContain("/work?");
        }
        mei.answer(1, 1, "1", "5");
        assertThat(mei.get(mei.seat + "/state").body()).doesNotContain("wrong");
    }

    @Test
    void aFullRoomAWrongNameAndAClosedRoomAreToldPlainly() {
        RoomState room = room(1, "");
        Tablet mei = desk.sit(room, "Mei");
        HttpResponse<String> full = desk.tablet().post("/join/" + room.code(), "alias", "Ren");
        assertThat(full.statusCode()).isEqualTo(409);
        assertThat(full.body())
                .contains("The room is full.")
                .contains("a seat that nobody uses can be taken away")
                .contains("href=\"/join/" + room.code());
        HttpResponse<String> blank = desk.tablet().post("/join/" + room.code(), "alias", "  ");
        assertThat(blank.statusCode()).isEqualTo(400);
        assertThat(blank.body()).contains("Type 1 to 24 letters");
        HttpResponse<String> noName = desk.tablet().post("/join/" + room.code(), "pupil", "OTHER");
        assertThat(noName.statusCode()).isEqualTo(400);
        desk.ask(room, new RoomCommand.Close(desk.millis()));
        HttpResponse<String> closed = mei.get(mei.seat);
        assertThat(closed.body()).contains("\"phase\":\"closed\"").contains("href=\"/join");
        HttpResponse<String> problems = mei.get(mei.seat + "/problems");
        assertThat(problems.statusCode()).isEqualTo(409);
        assertThat(problems.body()).contains("The room is closed.").contains("href=\"/join");
        assertThat(desk.tablet().get("/join/" + room.code()).statusCode()).isEqualTo(404);
    }

    @Test
    void aSecondTabletAsksAndGoesOnAfterAYes() {
        RoomState room = room(5, "");
        Tablet first = desk.sit(room, "Mei");
        start(room);
        first.answer(1, 1, "0", "46");
        Tablet second = desk.tablet();
        HttpResponse<String> taken = second.post("/join/" + room.code(), "alias", "mei");
        assertThat(taken.statusCode()).isEqualTo(409);
        assertThat(taken.body()).contains("Somebody sits there").contains("go on here");
        second.post("/join/" + room.code() + "/move", "alias", "mei");
        HttpResponse<String> asking = second.get(second.seat);
        assertThat(asking.statusCode()).isEqualTo(409);
        assertThat(asking.body()).contains("One moment, Mei");
        assertThat(second.answer(2, 1, "1", "47").statusCode()).isEqualTo(403);
        second.post(second.seat + "/move", "yes", "1");
        assertThat(second.get(second.seat).statusCode()).isEqualTo(409);

        assertThat(first.get(first.seat).body()).contains("Another tablet would like to go on");
        first.post(first.seat + "/move", "yes", "1");
        assertThat(second.get(second.seat).statusCode()).isEqualTo(200);
        assertThat(second.answer(2, 1, "1", "47").statusCode()).isEqualTo(200);
        assertThat(first.answer(3, 1, "2", "48").body()).contains("\"refused\":\"moved\"");
        HttpResponse<String> old = first.get(first.seat);
        assertThat(old.statusCode()).isEqualTo(409);
        assertThat(old.body()).contains("Your seat went on to another tablet.");
        assertThat(desk.seat(room, 1).right()).isEqualTo(2);
    }

    @Test
    void anAnswerToTheRoundBeforeIsKeptForTheTeacherOnce() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        start(room);
        desk.ask(room, new RoomCommand.Repeat(desk.millis()));
        start(room);
        for (int i = 0; i < 2; i++) {
            HttpResponse<String> later = mei.answer(1, 1, "0", "46");
            assertThat(later.statusCode()).isEqualTo(200);
            assertThat(later.body()).contains("\"taken\":1").contains("\"run\":2");
        }
        Seat seat = desk.seat(room, 1);
        assertThat(seat.later()).hasSize(1);
        assertThat(seat.written()).isZero();
        assertThat(desk.book().work().latest(5)).isEmpty();
        desk.ask(room, new RoomCommand.AdmitLate(1));
        desk.ask(room, new RoomCommand.AdmitLate(1));
        assertThat(desk.book().work().latest(5))
                .singleElement()
                .satisfies(work -> {
                    assertThat(work.sheetId()).isEqualTo("SHEET");
                    assertThat(work.answers())
                            .extracting(answer -> answer.written() + " " + answer.mark())
                            .containsExactly("46 right", " empty", " empty");
                });
        assertThat(desk.seat(room, 1).later()).isEmpty();
    }

    @Test
    void aTabletThatWasAwayWhenTheRoomWasClosedHandsInForTheTeacherToDecide() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        Tablet ren = desk.sit(room, "Ren");
        start(room);
        desk.ask(room, new RoomCommand.Close(desk.millis()));
        desk.pass(Duration.ofMinutes(20));
        HttpResponse<String> late = mei.answer(1, 1, "0", "46");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("\"taken\":1").contains("\"refused\":\"late\"");
        ren.cookie = ren.cookie.replace("seat=2.", "seat=1.");
        assertThat(ren.answer(2, 1, "0", "1").statusCode()).isEqualTo(403);
        assertThat(desk.book().work().latest(5)).isEmpty();
        assertThat(mei.get("/room/" + room.id() + "/late").statusCode()).isEqualTo(403);
        assertThat(desk.rooms().waiting()).extracting(RoomState::id).containsExactly(room.id());
        desk.ask(room, new RoomCommand.AdmitLate(1));
        assertThat(desk.rooms().waiting()).isEmpty();
        assertThat(desk.book().work().latest(5))
                .singleElement()
                .satisfies(work -> assertThat(work.right()).isEqualTo(1));
    }

    @Test
    void aPageOfARoundThatNeverWasIsToldSo() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        start(room);
        HttpResponse<String> stale = mei.answer(1, 2, "0", "46");
        assertThat(stale.statusCode()).isEqualTo(409);
        assertThat(stale.body()).contains("\"refused\":\"stale\"").contains("\"run\":1");
    }

    @Test
    void brokenMessagesAreRefused() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "Mei");
        start(room);
        assertThat(mei.post(mei.seat + "/answers").statusCode()).isEqualTo(400);
        assertThat(mei.answer(-1, 1, "0", "46").statusCode()).isEqualTo(400);
        assertThat(mei.answer(1, 1, "x", "46").statusCode()).isEqualTo(400);
        assertThat(mei.answer(1, 1, "3", "46").body()).contains("no-answer");
        assertThat(mei.answer(1, 1, "0", "4".repeat(41)).body()).contains("no-answer");
        assertThat(desk.seat(room, 1).written()).isZero();
    }

    @Test
    void aNameIsWrittenOutAndNeverRun() {
        RoomState room = room(5, "");
        Tablet mei = desk.sit(room, "<i>\"'&Mei");
        assertThat(mei.get(mei.seat).body())
                .doesNotContain("<i>\"'")
                .contains("&lt;i&gt;")
                .contains("\\u003ci\\u003e");
    }
}
