package tamabako.desk.room.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import tamabako.desk.room.Phase;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.records.ClassBook;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// The answers of a round as work in the class book. Each seat and run has one identity there, so
/// that keeping twice is keeping once.
final class KeptWork {

    private final ClassBook book;

    KeptWork(ClassBook book) {
        this.book = book;
    }

    /// Keeps what `event` made final; to be called in the transaction that keeps the event.
    ///
    /// @param room the state after it
    void keep(RoomState room, RoomEvent event) {
        if (!(room.phase() instanceof Phase.Ended(long at, _))) {
            return;
        }
        switch (event) {
            case RoomEvent.Ended _ -> room.seats().all().forEach(seat -> keep(room, seat, at));
            case RoomEvent.Answered answered -> keep(room, answered.seat(), at);
            case RoomEvent.HandedIn(int seat, _) -> keep(room, seat, at);
            case RoomEvent.CodeChanged _,
                    RoomEvent.Locked _,
                    RoomEvent.MarksShown _,
                    RoomEvent.Joined _,
                    RoomEvent.Removed _,
                    RoomEvent.Renamed _,
                    RoomEvent.ExtraTimeGiven _,
                    RoomEvent.TakeOverAsked _,
                    RoomEvent.TakenOver _,
                    RoomEvent.Started _,
                    RoomEvent.Paused _,
                    RoomEvent.TimeAdded _,
                    RoomEvent.RoundSet _,
                    RoomEvent.CameLate _,
                    RoomEvent.LateAdmitted _,
                    RoomEvent.Closed _ -> {}
        }
    }

    private void keep(RoomState room, int seat, long at) {
        room.seats().find(seat).ifPresent(found -> keep(room, found, at));
    }

    private void keep(RoomState room, Seat seat, long at) {
        if (seat.written() == 0 && !seat.handedIn()) {
            return;
        }
        Optional<String> pupil =
                Optional.of(seat.pupil())
                        .filter(known -> !known.isBlank())
                        .filter(known -> book.pupils().find(known).isPresent());
        Work work =
                new Work(
                        identity(room, seat),
                        room.current().sheet(),
                        pupil,
                        Instant.ofEpochMilli(at),
                        answers(seat));
        book.work().keepAnew(work);
    }

    /// The identity under which a seat's work of this run is kept.
    static String identity(RoomState room, Seat seat) {
        return "%s-%d-%d".formatted(room.id(), room.run(), seat.number());
    }

    private static List<MarkedAnswer> answers(Seat seat) {
        return seat.answers().stream()
                .map(answer ->
                        new MarkedAnswer(answer.written(), answer.mark(), took(answer.took())))
                .toList();
    }

    private static Optional<Duration> took(OptionalLong milliseconds) {
        return Stream.of(milliseconds)
                .filter(OptionalLong::isPresent)
                .map(OptionalLong::getAsLong)
                .map(Duration::ofMillis)
                .findFirst();
    }
}
