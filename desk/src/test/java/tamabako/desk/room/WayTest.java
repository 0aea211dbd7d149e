package tamabako.desk.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.desk.room.Turn.Move;

/// Pupils who hear or read the numbers on their own tablet, and those who have none and raise
/// hands.
class WayTest {

    private RoomState room = RoomState.open("room", "K7QM29", Lesson.setup(9, Lesson.called(3)));

    private Decision ask(RoomCommand command) {
        Decision decision = room.decide(command);
        decision.events().forEach(event -> room = room.apply(event));
        return decision;
    }

    private void move(Move move, int problem) {
        ask(new RoomCommand.TakeTurn(move, problem, 0));
    }

    private void call(int problem, String... written) {
        move(Move.BEGIN, problem);
        move(Move.OPEN, problem);
        for (int seat = 1; seat <= written.length; seat++) {
            int number = room.seats().find(seat).orElseThrow().taken() + 1;
            String answer = written[seat - 1];
            ask(new RoomCommand.Answer(seat, "key" + seat, 1, number, problem, answer, true, 0));
        }
        move(Move.REVEAL, problem);
    }

    private void sit(int seats) {
        for (int seat = 1; seat <= seats; seat++) {
            ask(new RoomCommand.Join("n" + seat, "", "key" + seat, 20));
        }
    }

    @Test
    void theTeacherGivesASeatItsWayAndExtraTimeStays() {
        sit(1);
        assertThat(room.seats().find(1).orElseThrow().way()).isEqualTo(Way.CLASS);
        ask(new RoomCommand.GiveWay(1, Way.CAPTIONS));
        ask(new RoomCommand.GiveExtraTime(1, 50));
        assertThat(room.seats().find(1).orElseThrow().aid())
                .isEqualTo(new Seat.Aid(50, Way.CAPTIONS));
        assertThat(ask(new RoomCommand.GiveWay(2, Way.SPOKEN)))
                .isEqualTo(Decision.refuse(Refusal.REMOVED));
    }

    @Test
    void rowsAreSaidOneAfterAnotherAndAnewWhenTheCallIsMadeAgain() {
        Decision notNow = Decision.refuse(Refusal.NOT_NOW);
        assertThat(ask(new RoomCommand.SayRow(0, 1))).isEqualTo(notNow);
        move(Move.BEGIN, 0);
        ask(new RoomCommand.SayRow(0, 1));
        ask(new RoomCommand.SayRow(0, 2));
        assertThat(ask(new RoomCommand.SayRow(0, 1))).isEqualTo(Decision.accept());
        assertThat(room.said()).isEqualTo(2);
        assertThat(ask(new RoomCommand.SayRow(1, 3))).isEqualTo(notNow);
        assertThat(ask(new RoomCommand.SayRow(0, 4))).isEqualTo(notNow);
        move(Move.OPEN, 0);
        assertThat(room.said()).isEqualTo(2);
        move(Move.BEGIN, 0);
        assertThat(room.said()).isZero();
        ask(new RoomCommand.SayRow(0, 3));
        move(Move.BEGIN, 1);
        assertThat(room.said()).isZero();
    }

    @Test
    void raisedHandsCountBesideTheTablets() {
        sit(2);
        ask(new RoomCommand.CountHands(Hands.BEGAN, 4));
        call(0, "46", "1");
        ask(new RoomCommand.CountHands(0, 3));
        assertThat(Tally.of(room)).isEqualTo(new Tally(6, List.of(4L)));
        assertThat(Tally.right(room, 0)).isEqualTo(4);
        call(1, "1", "47");
        ask(new RoomCommand.CountHands(1, 2));
        assertThat(Tally.of(room).left()).containsExactly(4L, 2L);
        assertThat(Tally.standing(room)).isEqualTo(new Tally.Standing(List.of(), 2));
        call(2, "48", "48");
        ask(new RoomCommand.CountHands(2, 0));
        assertThat(Tally.of(room).left()).containsExactly(4L, 2L, 0L);
        assertThat(Tally.standing(room).count()).isEqualTo(2);
    }

    @Test
    void handsThatNobodyCountedStayUp() {
        sit(1);
        ask(new RoomCommand.CountHands(Hands.BEGAN, 4));
        call(0, "46");
        assertThat(Tally.of(room)).isEqualTo(new Tally(5, List.of(5L)));
        assertThat(Tally.right(room, 0)).isEqualTo(1);
    }

    @Test
    void handsOfALaterCallOrOutOfRangeAreRefused() {
        assertThat(ask(new RoomCommand.CountHands(0, 3)))
                .isEqualTo(Decision.refuse(Refusal.NOT_NOW));
        move(Move.BEGIN, 0);
        assertThat(ask(new RoomCommand.CountHands(0, 1_000)))
                .isEqualTo(Decision.refuse(Refusal.OUT_OF_RANGE));
        assertThat(ask(new RoomCommand.CountHands(-2, 3)))
                .isEqualTo(Decision.refuse(Refusal.NOT_NOW));
        room =
                RoomState.open(
                        "room", "K7QM29", Lesson.setup(9, Lesson.shown(2, Activity.Screen.BOARD)));
        assertThat(ask(new RoomCommand.CountHands(Hands.BEGAN, 3)))
                .isEqualTo(Decision.refuse(Refusal.NOT_NOW));
    }
}
