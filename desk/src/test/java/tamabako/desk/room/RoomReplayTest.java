package tamabako.desk.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tamabako.testkit.Draw;
import tamabako.testkit.Property;

/// Whatever is wished in whatever order, the events give the state again, and no message counts
/// twice.
class RoomReplayTest {

    @Test
    void theEventsGiveTheStateAgainAndEveryMessageCountsOnce() {
        Property.forSeeds(
                400,
                draw -> {
                    RoomState opened =
                            RoomState.open(
                                    "room",
                                    "CODE22",
                                    Lesson.setup(
                                            200,
                                            Lesson.round(
                                                    "A", 4, Optional.of(Duration.ofSeconds(40))),
                                            Lesson.called(3),
                                            Lesson.shown(2, Activity.Screen.TABLETS)));
                    RoomState room = opened;
                    List<RoomEvent> events = new ArrayList<>();
                    Map<String, Integer> taken = new HashMap<>();
                    for (int turn = 0; turn < 150; turn++) {
                        for (RoomEvent event : room.decide(command(draw, room, turn)).events()) {
                            events.add(event);
                            room = room.apply(event);
                            message(event)
                                    .ifPresent(message -> taken.merge(message, 1, Integer::sum));
                        }
                    }
                    RoomState replayed = opened;
                    for (RoomEvent event : events) {
                        replayed = replayed.apply(event);
                    }
                    assertThat(replayed).isEqualTo(room);
                    assertThat(replayed.events()).isEqualTo(events.size());
                    assertThat(taken.values()).allMatch(times -> times == 1);
                });
    }

    private static Optional<String> message(RoomEvent event) {
        return switch (event) {
            case RoomEvent.Answered one -> Optional.of(one.seat() + "/" + one.number());
            case RoomEvent.CameLater one -> Optional.of(one.seat() + "/" + one.number());
            case RoomEvent.Passed(int seat, int number) -> Optional.of(seat + "/" + number);
            case RoomEvent.HandedIn(int seat, int number) -> Optional.of(seat + "/" + number);
            case RoomEvent _ -> Optional.empty();
        };
    }

    private static RoomCommand command(Draw draw, RoomState room, int turn) {
        long at = 1_000L * turn;
        int seat = draw.between(1, Math.max(1, room.seats().count()));
        int number = room.seats().find(seat).map(Seat::taken).orElse(0) + draw.between(0, 1);
        return switch (draw.between(0, 36)) {
            case 0, 1, 2 -> new RoomCommand.Join("name" + turn, "", "key", 0);
            case 3 -> new RoomCommand.Start(at);
            case 4 -> new RoomCommand.Pause(at);
            case 5 -> new RoomCommand.Next(at);
            case 6 -> new RoomCommand.Repeat(at);
            case 7 -> new RoomCommand.Remove(seat);
            case 8 -> new RoomCommand.AddTime(30);
            case 9 -> new RoomCommand.AskTakeOver(seat, "key");
            case 10 -> new RoomCommand.LetMove(seat, true);
            case 11 -> new RoomCommand.TimeUp(at);
            case 12 -> new RoomCommand.HandIn(seat, "key", room.run(), number, at);
            case 13 -> new RoomCommand.AdmitLate(seat);
            case 14 -> new RoomCommand.LeaveOut(seat);
            case 15 ->
                    new RoomCommand.Report(
                            seat,
                            "key",
                            room.run(),
                            room.turn().problem(),
                            draw.between(0, 1) == 0);
            case 16, 17, 18, 19 ->
                    new RoomCommand.TakeTurn(
                            draw.oneOf(List.of(Turn.Move.values())),
                            Math.max(0, room.turn().problem() + draw.between(0, 1)),
                            at);
            case 21 -> new RoomCommand.GiveWay(seat, draw.oneOf(List.of(Way.values())));
            case 22 -> new RoomCommand.SayRow(room.turn().problem(), draw.between(0, 3));
            case 23 -> new RoomCommand.CountHands(draw.between(-1, 2), draw.between(0, 9));
            case 20 ->
                    draw.between(0, 9) == 0
                            ? new RoomCommand.Close(at)
                            : new RoomCommand.ClearAway(at + 2 * RoomState.KEPT);
            default ->
                    new RoomCommand.Answer(
                            seat,
                            "key",
                            Math.max(1, room.run() - draw.between(0, 1)),
                            number,
                            draw.between(0, 3),
                            "46",
                            true,
                            at);
        };
    }

    @Test
    void seatsOfManyBlocksAreFoundByNumber() {
        Seats seats = Seats.NONE;
        for (int number = 1; number <= 200; number++) {
            seats =
                    seats.and(
                            Seat.fresh(new RoomEvent.Joined(number, "n" + number, "", "k", 0), 2));
        }
        Seats before = seats;
        Seats changed = seats.change(130, seat -> seat.named("other"));
        assertThat(changed.find(130).orElseThrow().name()).isEqualTo("other");
        assertThat(before.find(130).orElseThrow().name()).isEqualTo("n130");
        assertThat(changed.all().map(Seat::number)).hasSize(200).isSorted();
        assertThat(changed.changeAll(seat -> seat.named("all")).all().map(Seat::name))
                .hasSize(200)
                .containsOnly("all");
        assertThat(seats.find(201)).isEmpty();
        assertThat(seats.find(0)).isEmpty();
    }
}
