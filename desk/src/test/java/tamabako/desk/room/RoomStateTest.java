package tamabako.desk.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tamabako.desk.room.RoomCommand.Answer;

class RoomStateTest {

    private static final Optional<Duration> MINUTE = Optional.of(Duration.ofMinutes(1));

    private RoomState room =
            RoomState.open(
                    "room",
                    "K7QM29",
                    Lesson.setup(
                            3,
                            Lesson.round("A", 3, MINUTE),
                            Lesson.round("B", 2, Optional.empty())));

    private final List<RoomEvent> kept = new ArrayList<>();

    private Decision ask(RoomCommand command) {
        Decision decision = room.decide(command);
        decision.events()
                .forEach(event -> {
                    room = room.apply(event);
                    kept.add(event);
                });
        return decision;
    }

    private Optional<Refusal> refusal(RoomCommand command) {
        return ask(command) instanceof Decision.Refused(Refusal why, _)
                ? Optional.of(why)
                : Optional.empty();
    }

    private void sit(String name) {
        assertThat(ask(new RoomCommand.Join(name, "", "key-" + name, 0)))
                .isInstanceOf(Decision.Accepted.class);
    }

    private Seat seat(int number) {
        return room.seats().find(number).orElseThrow();
    }

    private static Answer answer(int number, int problem, String written, long at) {
        return new Answer(1, "key-Aoi", 1, number, problem, written, true, at);
    }

    @Test
    void seatsAreTakenUntilTheRoomIsFull() {
        sit("Aoi");
        sit("Haru");
        assertThat(refusal(new RoomCommand.Join("aoi", "", "k", 0))).contains(Refusal.NAME_TAKEN);
        sit("Mei");
        assertThat(refusal(new RoomCommand.Join("Ren", "", "k", 0))).contains(Refusal.FULL);
        ask(new RoomCommand.Remove(2));
        sit("Ren");
        assertThat(room.seats().present().map(Seat::name)).containsExactly("Aoi", "Mei", "Ren");
        assertThat(seat(4).name()).isEqualTo("Ren");
    }

    @Test
    void aLockedRoomLetsNobodyIn() {
        ask(new RoomCommand.Lock(true));
        assertThat(refusal(new RoomCommand.Join("Aoi", "", "k", 0))).contains(Refusal.LOCKED);
        ask(new RoomCommand.Lock(false));
        sit("Aoi");
    }

    @Test
    void namesAreSeenAndShort() {
        for (String bad : List.of("", "  ", "a\u202Eb", "a\u0000", "x".repeat(25), "\u200B")) {
            assertThat(refusal(new RoomCommand.Join(bad, "", "k", 0)))
                    .as(bad)
                    .contains(Refusal.BAD_NAME);
        }
        sit("<b>葵</b> 🧮");
        assertThat(seat(1).name()).isEqualTo("<b>葵</b> 🧮");
    }

    @Test
    void answersAreMarkedAndTimedByTheDesk() {
        sit("Aoi");
        ask(new RoomCommand.Start(1_000));
        ask(answer(1, 0, "46", 9_000));
        ask(answer(2, 1, "99", 15_000));
        ask(answer(3, 1, "47", 16_000));
        assertThat(seat(1).answers())
                .extracting(Answered::mark)
                .containsExactly("right", "right", "empty");
        assertThat(seat(1).answers().get(0).took()).hasValue(8_000);
        assertThat(seat(1).answers().get(1).took()).hasValue(7_000);
    }

    @Test
    void theSameMessageTwiceIsTakenOnce() {
        sit("Aoi");
        ask(new RoomCommand.Start(0));
        ask(answer(1, 0, "46", 1_000));
        RoomState once = room;
        assertThat(ask(answer(1, 0, "46", 2_000))).isEqualTo(Decision.accept());
        assertThat(ask(answer(1, 2, "other", 2_000))).isEqualTo(Decision.accept());
        assertThat(room).isEqualTo(once);
        assertThat(refusal(answer(3, 0, "1", 2_000))).contains(Refusal.GAP);
    }

    @Test
    void aSeatTakesOnlyWhatItsOwnTabletSends() {
        sit("Aoi");
        sit("Haru");
        ask(new RoomCommand.Start(0));
        RoomState before = room;
        Answer others = new Answer(2, "key-Aoi", 1, 1, 0, "46", true, 1_000);
        assertThat(refusal(others)).contains(Refusal.NOT_YOURS);
        assertThat(refusal(new Answer(9, "key-Aoi", 1, 1, 0, "46", true, 1_000)))
                .contains(Refusal.NOT_YOURS);
        assertThat(refusal(new Answer(2, "", 1, 1, 0, "46", true, 1_000)))
                .contains(Refusal.NOT_YOURS);
        assertThat(room).isEqualTo(before);
    }

    @Test
    void lateAnswersAreRefusedAndWaitForTheTeacher() {
        sit("Aoi");
        ask(new RoomCommand.Start(0));
        ask(answer(1, 0, "46", 62_999));
        assertThat(refusal(answer(2, 1, "47", 63_001))).contains(Refusal.LATE);
        assertThat(ask(answer(2, 1, "47", 63_002))).isEqualTo(Decision.accept());
        ask(new RoomCommand.TimeUp(63_100));
        assertThat(room.phase()).isInstanceOf(Phase.Ended.class);
        assertThat(refusal(answer(3, 2, "99", 80_000))).contains(Refusal.LATE);
        assertThat(refusal(new RoomCommand.HandIn(1, "key-Aoi", 1, 4, 80_001)))
                .contains(Refusal.LATE);
        assertThat(seat(1).right()).isEqualTo(1);
        assertThat(seat(1).taken()).isEqualTo(4);
        assertThat(seat(1).later())
                .containsExactly(
                        new Later(1, 1, "47", "right", 63_001),
                        new Later(1, 2, "99", "wrong", 80_000));
        ask(new RoomCommand.AdmitLate(1));
        assertThat(seat(1).right()).isEqualTo(2);
        assertThat(seat(1).later()).isEmpty();
        ask(new RoomCommand.AdmitLate(1));
        assertThat(refusal(answer(5, 1, "48", 90_002))).contains(Refusal.LATE);
        assertThat(seat(1).right()).isEqualTo(2);
    }

    @Test
    void extraTimeAndAddedTimeAndPausesMoveTheEnd() {
        sit("Aoi");
        sit("Haru");
        ask(new RoomCommand.GiveExtraTime(1, 50));
        ask(new RoomCommand.Start(0));
        assertThat(room.ends()).hasValue(93_000);
        ask(new RoomCommand.AddTime(60));
        assertThat(room.ends()).hasValue(183_000);
        ask(new RoomCommand.Pause(10_000));
        assertThat(room.ends()).isEmpty();
        ask(new RoomCommand.Start(50_000));
        assertThat(room.ends()).hasValue(223_000);
        assertThat(refusal(new RoomCommand.TimeUp(222_999))).contains(Refusal.NOT_NOW);
        assertThat(refusal(new RoomCommand.GiveExtraTime(1, 301))).contains(Refusal.OUT_OF_RANGE);
    }

    @Test
    void whatIsUnderWayWhenTheTeacherEndsIsStillTaken() {
        sit("Aoi");
        ask(new RoomCommand.Start(0));
        ask(new RoomCommand.End(5_000));
        ask(answer(1, 0, "46", 7_900));
        assertThat(seat(1).right()).isEqualTo(1);
        assertThat(refusal(answer(2, 1, "47", 8_100))).contains(Refusal.LATE);
    }

    @Test
    void theRoundsFollowOneAnother() {
        sit("Aoi");
        assertThat(refusal(answer(1, 0, "46", 0))).contains(Refusal.NOT_BEGUN);
        ask(new RoomCommand.Start(0));
        ask(new RoomCommand.Next(1_000));
        assertThat(kept).contains(new RoomEvent.Ended(1_000), new RoomEvent.RoundSet(1));
        assertThat(room.run()).isEqualTo(2);
        assertThat(refusal(new RoomCommand.Next(2_000))).contains(Refusal.LAST_ROUND);
        assertThat(refusal(new RoomCommand.AddTime(60))).contains(Refusal.NO_LIMIT);
        ask(new RoomCommand.Repeat(3_000));
        assertThat(room.run()).isEqualTo(3);
        assertThat(room.round()).isEqualTo(1);
        assertThat(seat(1).answers()).hasSize(2);
    }

    @Test
    void aSecondTabletGoesOnOnlyAfterAYes() {
        sit("Aoi");
        ask(new RoomCommand.Start(0));
        ask(answer(1, 0, "46", 1_000));
        ask(new RoomCommand.AskTakeOver(1, "second"));
        assertThat(refusal(new Answer(1, "second", 1, 2, 1, "47", true, 2_000)))
                .contains(Refusal.NOT_YOURS);
        assertThat(refusal(new RoomCommand.AgreeToMove(1, "second", true)))
                .contains(Refusal.NOT_YOURS);
        ask(new RoomCommand.AgreeToMove(1, "key-Aoi", false));
        assertThat(refusal(new RoomCommand.LetMove(1, true))).contains(Refusal.NOBODY_ASKS);

        ask(new RoomCommand.AskTakeOver(1, "third"));
        ask(new RoomCommand.LetMove(1, true));
        assertThat(refusal(answer(2, 1, "47", 3_000))).contains(Refusal.MOVED);
        ask(new Answer(1, "third", 1, 2, 1, "47", true, 4_000));
        assertThat(seat(1).right()).isEqualTo(2);
    }

    @Test
    void aRemovedSeatIsToldSoAndAClosedRoomTakesNothing() {
        sit("Aoi");
        ask(new RoomCommand.Start(0));
        ask(new RoomCommand.Remove(1));
        assertThat(refusal(answer(1, 0, "46", 1_000))).contains(Refusal.REMOVED);
        ask(new RoomCommand.Close(2_000));
        assertThat(refusal(new RoomCommand.Start(3_000))).contains(Refusal.CLOSED);
    }

    @Test
    void answersThatAreNoneAreRefused() {
        sit("Aoi");
        ask(new RoomCommand.Start(0));
        assertThat(refusal(answer(1, 3, "46", 1))).contains(Refusal.NO_ANSWER);
        assertThat(refusal(answer(1, -1, "46", 1))).contains(Refusal.NO_ANSWER);
        assertThat(refusal(answer(1, 0, "4".repeat(41), 1))).contains(Refusal.NO_ANSWER);
    }

    @Test
    void aRoomHasRoundsAndSeats() {
        assertThatThrownBy(() -> Lesson.setup(3)).hasMessageContaining("one round at least");
        assertThatThrownBy(() -> Lesson.setup(0, Lesson.round("A", 1, MINUTE)))
                .hasMessageContaining("1 to 10000 seats");
    }
}
