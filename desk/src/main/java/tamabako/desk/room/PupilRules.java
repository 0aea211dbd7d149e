package tamabako.desk.room;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import tamabako.desk.room.Seat.Late;
import tamabako.problems.Problem;
import tamabako.problems.marking.Mark;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
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
        Optional<Decision> refused = refused(seat, answer.run(), answer.number(), answer.at());
        if (refused.isPresent()) {
            return refused.get();
        }
        boolean isAnswer =
                answer.problem() >= 0
                        && answer.problem() < seat.answers().size()
                        && answer.written().length() <= LONGEST;
        return isAnswer ? taken(seat, answer) : Decision.refuse(Refusal.NO_ANSWER);
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
        return switch (room.current().activity()) {
            case Activity.Written(List<Problem> problems, WritingRules rules) -> {
                Problem problem = problems.get(answer.problem());
                Mark mark = Marker.mark(problem, answer.written(), rules);
                yield Sayable.word(mark.getClass());
            }
        };
    }

    private Decision handIn(Seat seat, RoomCommand.HandIn handIn) {
        if (handIn.number() <= seat.taken()) {
            return Decision.accept();
        }
        return refused(seat, handIn.run(), handIn.number(), handIn.at())
                .orElseGet(() ->
                        Decision.accept(new RoomEvent.HandedIn(seat.number(), handIn.number())));
    }

    private Optional<Decision> refused(Seat seat, int run, int number, long at) {
        if (run != room.run()) {
            return Optional.of(Decision.refuse(Refusal.STALE));
        }
        if (number != seat.taken() + 1) {
            return Optional.of(Decision.refuse(Refusal.GAP));
        }
        if (room.phase() instanceof Phase.Waiting) {
            return Optional.of(Decision.refuse(Refusal.NOT_BEGUN));
        }
        if (seat.handedIn()) {
            return Optional.of(Decision.refuse(Refusal.HANDED_IN));
        }
        return isLate(seat, at) ? Optional.of(late(seat)) : Optional.empty();
    }

    private boolean isLate(Seat seat, long at) {
        if (seat.late() == Late.ADMITTED) {
            return false;
        }
        if (room.phase() instanceof Phase.Ended(long ended, _)) {
            return at > ended + RoomState.GRACE;
        }
        OptionalLong limit = room.limit(seat);
        return limit.isPresent() && room.phase().worked(at) > limit.getAsLong() + RoomState.GRACE;
    }

    private static Decision late(Seat seat) {
        List<RoomEvent> noted =
                seat.late() == Late.NONE
                        ? List.of(new RoomEvent.CameLate(seat.number()))
                        : List.of();
        return new Decision.Refused(Refusal.LATE, noted);
    }
}
