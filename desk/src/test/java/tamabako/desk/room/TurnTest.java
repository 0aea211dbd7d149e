package tamabako.desk.room;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tamabako.desk.room.Turn.Move;
import tamabako.desk.room.Turn.Step;

/// Rounds whose problems come one after another: when answers are taken, and who is left.
class TurnTest {

    private RoomState room = RoomState.open("room", "K7QM29", Lesson.setup(9, Lesson.called(3)));

    private Decision ask(RoomCommand command) {
        Decision decision = room.decide(command);
        decision.events().forEach(event -> room = room.apply(event));
        return decision;
    }

    private Decision move(Move move, int problem, long at) {
        return ask(new RoomCommand.TakeTurn(move, problem, at));
    }

    private Decision answer(int seat, int problem, String written, long at) {
        int number = seat(seat).taken() + 1;
        return ask(
                new RoomCommand.Answer(
                        seat, "key" + seat, room.run(), number, problem, written, true, at));
    }

    private Seat seat(int number) {
        return room.seats().find(number).orElseThrow();
    }

    private void sit(int seats) {
        for (int seat = 1; seat <= seats; seat++) {
            ask(new RoomCommand.Join("n" + seat, "", "key" + seat, 0));
        }
    }

    private static final Decision EARLY = Decision.refuse(Refusal.EARLY);

    @Test
    void answersAreTakenAfterTheLastWordAndNotBefore() {
        sit(1);
        assertThat(answer(1, 0, "46", 0)).isEqualTo(Decision.refuse(Refusal.NOT_BEGUN));
        move(Move.BEGIN, 0, 1_000);
        assertThat(room.phase()).isInstanceOf(Phase.Running.class);
        assertThat(answer(1, 0, "46", 600_000)).isEqualTo(EARLY);
        move(Move.OPEN, 0, 9_000);
        assertThat(answer(1, 1, "47", 9_500)).isEqualTo(EARLY);
        answer(1, 0, "46", 10_000);
        assertThat(seat(1).right()).isEqualTo(1);
        assertThat(seat(1).taken()).isEqualTo(1);
    }

    @Test
    void theSameCallAgainClosesTheAnswersUntilItIsOver() {
        sit(1);
        move(Move.BEGIN, 0, 0);
        move(Move.OPEN, 0, 5_000);
        move(Move.BEGIN, 0, 6_000);
        assertThat(room.turn()).isEqualTo(new Turn(0, 2, Step.UNDER_WAY, 6_000));
        assertThat(answer(1, 0, "46", 7_000)).isEqualTo(EARLY);
        move(Move.OPEN, 0, 11_000);
        answer(1, 0, "46", 12_000);
        assertThat(seat(1).right()).isEqualTo(1);
    }

    @Test
    void afterTheAnswerWasToldAnswersWaitForTheTeacher() {
        sit(2);
        move(Move.BEGIN, 0, 0);
        move(Move.OPEN, 0, 5_000);
        move(Move.REVEAL, 0, 10_000);
        answer(1, 0, "46", 12_900);
        assertThat(seat(1).right()).isEqualTo(1);
        answer(2, 0, "46", 13_100);
        assertThat(seat(2).right()).isZero();
        assertThat(seat(2).later()).containsExactly(new Later(1, 0, "46", "right", 13_100));
        move(Move.BEGIN, 1, 14_000);
        answer(1, 0, "99", 14_001);
        assertThat(seat(1).right()).isEqualTo(1);
        ask(new RoomCommand.AdmitLate(2));
        assertThat(seat(2).right()).isEqualTo(1);
        assertThat(seat(2).later()).isEmpty();
    }

    @Test
    void aCallThatIsKnownStaysKnownWhenItIsRepeated() {
        sit(1);
        move(Move.BEGIN, 0, 0);
        move(Move.REVEAL, 0, 10_000);
        move(Move.BEGIN, 0, 60_000);
        move(Move.OPEN, 0, 65_000);
        assertThat(room.turn()).isEqualTo(new Turn(0, 2, Step.REVEALED, 10_000));
        answer(1, 0, "46", 66_000);
        assertThat(seat(1).right()).isZero();
        assertThat(seat(1).later()).hasSize(1);
    }

    @Test
    void callsFollowOneAnotherAndNeverGoBack() {
        Decision notNow = Decision.refuse(Refusal.NOT_NOW);
        assertThat(move(Move.OPEN, 0, 0)).isEqualTo(notNow);
        move(Move.BEGIN, 1, 0);
        assertThat(move(Move.BEGIN, 0, 1)).isEqualTo(notNow);
        assertThat(move(Move.BEGIN, 3, 1)).isEqualTo(notNow);
        assertThat(move(Move.REVEAL, 0, 1)).isEqualTo(notNow);
        ask(new RoomCommand.End(2));
        assertThat(move(Move.BEGIN, 2, 3)).isEqualTo(notNow);
        ask(new RoomCommand.Repeat(4));
        assertThat(room.turn()).isEqualTo(Turn.NONE);
        assertThat(move(Move.BEGIN, 0, 5)).isInstanceOf(Decision.Accepted.class);
    }

    @Test
    void aRoundOfProblemsOnPaperHasNoTurns() {
        room =
                RoomState.open(
                        "room",
                        "K7QM29",
                        Lesson.setup(9, Lesson.round("A", 3, java.util.Optional.empty())));
        assertThat(move(Move.BEGIN, 0, 0)).isEqualTo(Decision.refuse(Refusal.NOT_NOW));
    }

    @Test
    void whoeverIsRightInEveryCallIsLeft() {
        sit(3);
        assertThat(Tally.of(room)).isEqualTo(new Tally(3, java.util.List.of()));
        call(0, "46", "46", "46");
        call(1, "47", "1", "47");
        assertThat(Tally.of(room)).isEqualTo(new Tally(3, java.util.List.of(3L, 2L)));
        move(Move.BEGIN, 2, 30_000);
        move(Move.OPEN, 2, 30_001);
        answer(3, 2, "48", 30_002);
        answer(2, 2, "48", 30_002);
        assertThat(Tally.of(room).left()).containsExactly(3L, 2L);
        move(Move.REVEAL, 2, 30_003);
        assertThat(Tally.of(room).left()).containsExactly(3L, 2L, 1L);
        assertThat(Tally.standing(room).seats()).containsExactly(seat(3));
        assertThat(Tally.right(room, 2)).isEqualTo(2);
    }

    @Test
    void whereAllAreWrongThoseWhoWereInPlayOn() {
        sit(3);
        call(0, "46", "46", "1");
        call(1, "1", "2", "47");
        assertThat(Tally.of(room).left()).containsExactly(2L, 0L);
        assertThat(Tally.standing(room).seats()).containsExactly(seat(1), seat(2));
        call(2, "48", "1", "48");
        assertThat(Tally.of(room).left()).containsExactly(2L, 0L, 1L);
        assertThat(Tally.standing(room).seats()).containsExactly(seat(1));
    }

    private void call(int problem, String... written) {
        long at = 10_000L * problem;
        move(Move.BEGIN, problem, at);
        move(Move.OPEN, problem, at + 1_000);
        for (int seat = 1; seat <= written.length; seat++) {
            answer(seat, problem, written[seat - 1], at + 2_000);
        }
        move(Move.REVEAL, problem, at + 3_000);
    }

    @Test
    void aTabletThatShowsByItselfAnswersWhenItsLastNumberCanBeOut() {
        room =
                RoomState.open(
                        "room",
                        "K7QM29",
                        Lesson.setup(9, Lesson.shown(2, Activity.Screen.TABLETS)));
        sit(2);
        move(Move.BEGIN, 0, 1_000);
        long out = 1_000 + 3_000 + 2 * 500 + 350;
        assertThat(answer(1, 0, "46", out - 1)).isEqualTo(EARLY);
        ask(new RoomCommand.Report(1, "key1", 1, 0, true));
        answer(1, 0, "46", out);
        assertThat(seat(1).right()).isEqualTo(1);

        ask(new RoomCommand.Report(2, "key2", 1, 0, false));
        assertThat(seat(2).answers().getFirst().isVoid()).isTrue();
        assertThat(answer(2, 0, "46", out)).isEqualTo(Decision.refuse(Refusal.NOT_COUNTED));
        move(Move.BEGIN, 0, 20_000);
        ask(new RoomCommand.Report(2, "key2", 1, 0, true));
        answer(2, 0, "46", 30_000);
        assertThat(seat(2).right()).isEqualTo(1);
        ask(new RoomCommand.Report(1, "key1", 1, 0, false));
        assertThat(seat(1).right()).isEqualTo(1);
        assertThat(ask(new RoomCommand.Report(1, "key2", 1, 0, false)))
                .isEqualTo(Decision.refuse(Refusal.NOT_YOURS));
    }

    @Test
    void aShowingOnTheProjectorIsAnsweredWhenTheProjectorSaysSo() {
        room =
                RoomState.open(
                        "room", "K7QM29", Lesson.setup(9, Lesson.shown(2, Activity.Screen.BOARD)));
        sit(1);
        move(Move.BEGIN, 0, 0);
        assertThat(answer(1, 0, "46", 600_000)).isEqualTo(EARLY);
        move(Move.SPOIL, 0, 600_000);
        assertThat(answer(1, 0, "46", 600_001)).isEqualTo(Decision.refuse(Refusal.NOT_COUNTED));
        assertThat(move(Move.OPEN, 0, 600_002)).isEqualTo(Decision.accept());
        move(Move.BEGIN, 0, 700_000);
        move(Move.OPEN, 0, 710_000);
        answer(1, 0, "46", 710_001);
        assertThat(seat(1).right()).isEqualTo(1);
    }
}
