package tamabako.desk.room;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import tamabako.problems.Problem;
import tamabako.problems.marking.Marker;
import tamabako.problems.words.Sayable;

/// What a pupil may do: with the own seat, in the round that goes on, in time, and once.
record PupilRules(RoomState room) {

    /// The longest answer that is taken, in letters.
    static final int LONGEST = 40;

    Decision decide(RoomCommand.OfPupil command) {
        Optional<Seat> found = room.seats().find(command.seat());
        if (found.isEmpty()) {
            return Decision.refuse(Refusal.NOT_YOURS);
        }
        Seat seat = found.get();
        if (!isSame(seat.keys().key(), command.key())) {
            boolean isFormer = isSame(seat.keys().former(), command.key());
            return Decision.refuse(isFormer ? Refusal.MOVED : Refusal.NOT_YOURS);
        }
        if (seat.removed()) {
            return Decision.refuse(Refusal.REMOVED);
        }
        return switch (command) {
            case RoomCommand.AgreeToMove move -> TakeOver.decide(room, seat.number(), move.yes());
            case RoomCommand.Answer answer -> answer(seat, answer);
            case RoomCommand.HandIn handIn -> handIn(seat, handIn);
            case RoomCommand.Report report -> report(seat, report);
        };
    }

    /// Digests are compared in a time that tells nothing of where they differ.
    private static boolean isSame(String one, String other) {
        return !one.isEmpty()
                && MessageDigest.isEqual(
                        one.getBytes(StandardCharsets.US_ASCII),
                        other.getBytes(StandardCharsets.US_ASCII));
    }

    private Decision answer(Seat seat, RoomCommand.Answer answer) {
        if (answer.number() <= seat.taken()) {
            return Decision.accept();
        }
        Optional<Decision> refused = outOfOrder(seat, answer.run(), answer.number());
        if (refused.isPresent()) {
            return refused.get();
        }
        Activity activity = room.roundOf(answer.run()).activity();
        boolean isAnswer =
                answer.problem() >= 0
                        && answer.problem() < activity.answers()
                        && answer.written().length() <= LONGEST;
        if (answer.run() < room.run()) {
            return isAnswer ? later(seat, answer) : Decision.refuse(Refusal.NO_ANSWER);
        }
        Optional<Refusal> why = refused(seat, answer.at());
        if (why.isPresent() && why.get() != Refusal.LATE) {
            return Decision.refuse(why.get());
        }
        if (!isAnswer) {
            return Decision.refuse(Refusal.NO_ANSWER);
        }
        if (why.isPresent()) {
            return new Decision.Refused(Refusal.LATE, later(seat, answer).events());
        }
        return activity.inTurn() ? inTurn(seat, answer) : taken(seat, answer);
    }

    /// An answer that comes too late, or to a round or a problem that the class has left, is kept
    /// beside the others.
    private Decision later(Seat seat, RoomCommand.Answer answer) {
        Later later =
                new Later(
                        answer.run(),
                        answer.problem(),
                        answer.written().strip(),
                        mark(answer),
                        answer.at());
        return Decision.accept(new RoomEvent.CameLater(seat.number(), answer.number(), later));
    }

    private Decision inTurn(Seat seat, RoomCommand.Answer answer) {
        Optional<Refusal> closed = new TurnRules(room).closed(answer.problem(), answer.at());
        if (closed.isEmpty() && seat.answers().get(answer.problem()).isVoid()) {
            closed = Optional.of(Refusal.NOT_COUNTED);
        }
        if (closed.isEmpty()) {
            return taken(seat, answer);
        }
        return closed.get() == Refusal.LATE ? later(seat, answer) : Decision.refuse(closed.get());
    }

    /// A showing that went wrong does not count, but takes nothing away that was answered before.
    private Decision report(Seat seat, RoomCommand.Report report) {
        boolean isOn =
                report.run() == room.run()
                        && report.problem() == room.turn().problem()
                        && report.problem() >= 0
                        && room.current().activity() instanceof Activity.Shown;
        if (!isOn) {
            return Decision.refuse(Refusal.STALE);
        }
        Answered answer = seat.answers().get(report.problem());
        boolean changes = report.exact() ? answer.isVoid() : answer.equals(Answered.NOTHING);
        return changes
                ? Decision.accept(
                        new RoomEvent.Ran(seat.number(), report.problem(), report.exact()))
                : Decision.accept();
    }

    private Decision taken(Seat seat, RoomCommand.Answer answer) {
        long worked = room.phase().worked(answer.at());
        OptionalLong before = seat.answers().get(answer.problem()).took();
        long took = answer.fresh() ? Math.max(0, worked - seat.turned()) + before.orElse(0) : -1;
        return Decision.accept(
                new RoomEvent.Answered(
                        seat.number(),
                        answer.number(),
                        answer.problem(),
                        answer.written().strip(),
                        mark(answer),
                        took,
                        worked));
    }

    private String mark(RoomCommand.Answer answer) {
        Activity activity = room.roundOf(answer.run()).activity();
        Problem problem = activity.problems().get(answer.problem());
        return Sayable.word(Marker.mark(problem, answer.written(), activity.rules()).getClass());
    }

    private Decision handIn(Seat seat, RoomCommand.HandIn handIn) {
        if (handIn.number() <= seat.taken()) {
            return Decision.accept();
        }
        Optional<Decision> refused = outOfOrder(seat, handIn.run(), handIn.number());
        if (refused.isPresent()) {
            return refused.get();
        }
        RoomEvent passed = new RoomEvent.Passed(seat.number(), handIn.number());
        if (handIn.run() < room.run()) {
            return Decision.accept(passed);
        }
        return refused(seat, handIn.at())
                .<Decision>map(why ->
                        new Decision.Refused(
                                why, why == Refusal.LATE ? List.of(passed) : List.of()))
                .orElseGet(() ->
                        Decision.accept(new RoomEvent.HandedIn(seat.number(), handIn.number())));
    }

    /// A message of a run that never was, or one that jumps over another.
    private Optional<Decision> outOfOrder(Seat seat, int run, int number) {
        if (run < 1 || run > room.run()) {
            return Optional.of(Decision.refuse(Refusal.STALE));
        }
        return number == seat.taken() + 1
                ? Optional.empty()
                : Optional.of(Decision.refuse(Refusal.GAP));
    }

    private Optional<Refusal> refused(Seat seat, long at) {
        if (room.phase() instanceof Phase.Waiting) {
            return Optional.of(Refusal.NOT_BEGUN);
        }
        if (seat.handedIn()) {
            return Optional.of(Refusal.HANDED_IN);
        }
        return isLate(seat, at) ? Optional.of(Refusal.LATE) : Optional.empty();
    }

    private boolean isLate(Seat seat, long at) {
        if (room.phase() instanceof Phase.Ended(long ended, _)) {
            return at > ended + RoomState.GRACE;
        }
        OptionalLong limit = room.limit(seat);
        return limit.isPresent() && room.phase().worked(at) > limit.getAsLong() + RoomState.GRACE;
    }
}
