package tamabako.desk.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// Answers of a tablet that was away while the class went on to another round.
class LaterTest {

    private RoomState room =
            RoomState.open(
                    "room",
                    "K7QM29",
                    Lesson.setup(
                            3,
                            Lesson.round("A", 3, Optional.empty()),
                            Lesson.round("B", 2, Optional.empty())));

    private Decision ask(RoomCommand command) {
        Decision decision = room.decide(command);
        decision.events().forEach(event -> room = room.apply(event));
        return decision;
    }

    private Decision answer(int run, int number, int problem, String written) {
        return ask(new RoomCommand.Answer(1, "key", run, number, problem, written, false, 9_000));
    }

    private Seat seat() {
        return room.seats().find(1).orElseThrow();
    }

    private void intoTheSecondRound() {
        ask(new RoomCommand.Join("Aoi", "", "key", 0));
        ask(new RoomCommand.Start(0));
        answer(1, 1, 0, "46");
        ask(new RoomCommand.Next(1_000));
        ask(new RoomCommand.Start(2_000));
    }

    @Test
    void answersToARoundThatIsOverAreTakenOnceAndWaitForTheTeacher() {
        intoTheSecondRound();
        assertThat(answer(1, 2, 1, "47").events()).hasSize(1);
        assertThat(answer(1, 2, 1, "47")).isEqualTo(Decision.accept());
        answer(1, 3, 2, "99");
        assertThat(seat().taken()).isEqualTo(3);
        assertThat(seat().later())
                .containsExactly(
                        new Later(1, 1, "47", "right", 9_000),
                        new Later(1, 2, "99", "wrong", 9_000));
        assertThat(seat().written()).isZero();
        answer(2, 4, 0, "46");
        assertThat(seat().right()).isEqualTo(1);
    }

    @Test
    void theTeacherLetsThemInOrLeavesThemOut() {
        intoTheSecondRound();
        answer(1, 2, 1, "47");
        Later later = seat().later().getFirst();
        assertThat(ask(new RoomCommand.AdmitLate(1)).events())
                .containsExactly(new RoomEvent.LetIn(1, later));
        assertThat(seat().later()).isEmpty();
        assertThat(ask(new RoomCommand.AdmitLate(1)).events()).isEmpty();
        answer(1, 3, 1, "48");
        ask(new RoomCommand.LeaveOut(1));
        assertThat(seat().later()).isEmpty();
    }

    @Test
    void theLastWordOnAProblemCountsAndHandingInAnOldRoundChangesNothing() {
        intoTheSecondRound();
        answer(1, 2, 1, "4");
        answer(1, 3, 1, "47");
        assertThat(seat().later()).extracting(Later::written).containsExactly("47");
        ask(new RoomCommand.HandIn(1, "key", 1, 4, 9_000));
        assertThat(seat().taken()).isEqualTo(4);
        assertThat(seat().handedIn()).isFalse();
    }

    @Test
    void whatNoRoundAskedIsRefused() {
        intoTheSecondRound();
        assertThat(List.of(answer(3, 2, 0, "46"), answer(0, 2, 0, "46")))
                .containsOnly(Decision.refuse(Refusal.STALE));
        assertThat(answer(1, 2, 3, "46")).isEqualTo(Decision.refuse(Refusal.NO_ANSWER));
        assertThat(answer(1, 3, 0, "46")).isEqualTo(Decision.refuse(Refusal.GAP));
        assertThat(seat().later()).isEmpty();
    }

    @Test
    void aRoomThatIsClosedTakesWhatIsStillOnATabletAndNothingElse() {
        intoTheSecondRound();
        answer(1, 2, 1, "47");
        answer(2, 3, 0, "46");
        ask(new RoomCommand.Close(4_000));
        assertThat(room.closed()).isTrue();
        assertThat(answer(2, 4, 1, "47").events()).hasSize(1);
        assertThat(answer(2, 5, 1, "48")).isInstanceOf(Decision.Refused.class);
        assertThat(seat().later()).extracting(Later::written).containsExactly("47", "48");
        assertThat(
                        List.of(
                                ask(new RoomCommand.Join("Ren", "", "other", 0)),
                                ask(new RoomCommand.Repeat(10_000)),
                                ask(new RoomCommand.Remove(1)),
                                ask(new RoomCommand.Close(10_000)),
                                ask(new RoomCommand.AskTakeOver(1, "other")),
                                ask(new RoomCommand.TimeUp(10_000))))
                .containsOnly(Decision.refuse(Refusal.CLOSED));
        assertThat(ask(new RoomCommand.Answer(1, "stranger", 2, 6, 0, "1", false, 9_000)))
                .isEqualTo(Decision.refuse(Refusal.NOT_YOURS));
        ask(new RoomCommand.AdmitLate(1));
        assertThat(room.waits()).isFalse();
        assertThat(seat().answers()).extracting(Answered::written).containsExactly("46", "48");
    }

    @Test
    void aClosedRoomGoesAfterSomeTimeButNeverWithWhatWaits() {
        intoTheSecondRound();
        answer(1, 2, 1, "47");
        ask(new RoomCommand.Close(4_000));
        long after = 4_000 + RoomState.KEPT;
        assertThat(room.cleared()).isEmpty();
        assertThat(ask(new RoomCommand.ClearAway(10 * after)))
                .isEqualTo(Decision.refuse(Refusal.NOT_NOW));
        ask(new RoomCommand.LeaveOut(1));
        assertThat(room.cleared()).hasValue(after);
        assertThat(ask(new RoomCommand.ClearAway(after - 1)))
                .isEqualTo(Decision.refuse(Refusal.NOT_NOW));
        ask(new RoomCommand.ClearAway(after));
        assertThat(room.doors()).isEqualTo(new Doors.Gone());
        assertThat(answer(1, 3, 1, "47")).isEqualTo(Decision.refuse(Refusal.CLOSED));
    }

    @Test
    void aRoomInWhichNobodySatGoesAtOnce() {
        ask(new RoomCommand.Close(4_000));
        assertThat(room.doors()).isEqualTo(new Doors.Gone());
    }
}
