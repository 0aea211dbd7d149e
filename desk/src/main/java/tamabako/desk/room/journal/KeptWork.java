package tamabako.desk.room.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import tamabako.desk.room.Answered;
import tamabako.desk.room.Later;
import tamabako.desk.room.Phase;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Round;
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
        if (event instanceof RoomEvent.LetIn(int seat, Later later) && later.run() < room.run()) {
            room.seats().find(seat).ifPresent(found -> letIn(room, found, later));
            return;
        }
        if (!(room.phase() instanceof Phase.Ended(long at, _))) {
            return;
        }
        switch (event) {
            case RoomEvent.Ended _ -> room.seats().all().forEach(seat -> keep(room, seat, at));
            case RoomEvent.Answered answered -> keep(room, answered.seat(), at);
            case RoomEvent.HandedIn(int seat, _) -> keep(room, seat, at);
            case RoomEvent.LetIn(int seat, _) -> keep(room, seat, at);
            case RoomEvent.CodeChanged _,
                    RoomEvent.Locked _,
                    RoomEvent.MarksShown _,
                    RoomEvent.Joined _,
                    RoomEvent.Removed _,
                    RoomEvent.Renamed _,
                    RoomEvent.ExtraTimeGiven _,
                    RoomEvent.WayGiven _,
                    RoomEvent.RowSaid _,
                    RoomEvent.HandsRaised _,
                    RoomEvent.TakeOverAsked _,
                    RoomEvent.TakenOver _,
                    RoomEvent.Started _,
                    RoomEvent.Paused _,
                    RoomEvent.TimeAdded _,
                    RoomEvent.RoundSet _,
                    RoomEvent.Turned _,
                    RoomEvent.Ran _,
                    RoomEvent.CameLater _,
                    RoomEvent.Passed _,
                    RoomEvent.LeftOut _,
                    RoomEvent.Forgotten _,
                    RoomEvent.Closed _,
                    RoomEvent.Cleared _ -> {}
        }
    }

    private void keep(RoomState room, int seat, long at) {
        room.seats().find(seat).ifPresent(found -> keep(room, found, at));
    }

    private void keep(RoomState room, Seat seat, long at) {
        if (seat.written() == 0 && !seat.handedIn()) {
            return;
        }
        book.work()
                .keepAnew(
                        new Work(
                                identity(room, room.run(), seat),
                                room.current().sheet(),
                                pupil(seat),
                                Instant.ofEpochMilli(at),
                                answers(seat)));
    }

    private Optional<String> pupil(Seat seat) {
        return Optional.of(seat.pupil())
                .filter(known -> !known.isBlank())
                .filter(known -> book.pupils().find(known).isPresent());
    }

    /// An answer to a round that is over joins the work that was kept then; where nothing was, it
    /// is work of its own.
    private void letIn(RoomState room, Seat seat, Later later) {
        Round round = room.roundOf(later.run());
        String identity = identity(room, later.run(), seat);
        Optional<Work> kept = book.work().find(identity);
        List<MarkedAnswer> answers =
                new ArrayList<>(
                        kept.map(Work::answers)
                                .orElseGet(() ->
                                        Collections.nCopies(
                                                round.activity().answers(),
                                                new MarkedAnswer("", "empty"))));
        answers.set(later.problem(), new MarkedAnswer(later.written(), later.mark()));
        Instant at = Instant.ofEpochMilli(later.at());
        book.work()
                .keepAnew(
                        kept.map(work -> work.answered(answers))
                                .orElseGet(() ->
                                        new Work(
                                                identity,
                                                round.sheet(),
                                                pupil(seat),
                                                at,
                                                answers)));
    }

    /// The identity under which a seat's work of this run is kept.
    static String identity(RoomState room, int run, Seat seat) {
        return "%s-%d-%d".formatted(room.id(), run, seat.number());
    }

    private static List<MarkedAnswer> answers(Seat seat) {
        return seat.answers().stream()
                .map(answer ->
                        new MarkedAnswer(
                                answer.written(),
                                answer.isVoid() ? Answered.NOTHING.mark() : answer.mark(),
                                took(answer.took())))
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
