package tamabako.desk.room;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import tamabako.desk.room.RoomEvent.CodeChanged;

/// All that is known of a room.
///
/// @param id opaque
/// @param code what pupils type to join
/// @param setup what it was opened with
/// @param events how many events led here
/// @param round which round of the setup, from 0
/// @param run how many rounds were set so far, repeats too, from 1
/// @param phase where the round stands
/// @param added how much time was added to the round, in milliseconds
/// @param locked whether nobody may join any more
/// @param marksShown whether the projector shows right and wrong
/// @param closed whether the room is gone
/// @param seats who sits there
public record RoomState(
        String id,
        String code,
        Setup setup,
        long events,
        int round,
        int run,
        Phase phase,
        long added,
        boolean locked,
        boolean marksShown,
        boolean closed,
        Seats seats) {

    /// So long after its end a round still takes what was under way, in milliseconds.
    public static final long GRACE = 3_000;

    /// A room that was just opened.
    public static RoomState open(String id, String code, Setup setup) {
        return new RoomState(
                id, code, setup, 0, 0, 1, new Phase.Waiting(), 0, false, false, false, Seats.NONE);
    }

    /// What comes of a wish.
    public Decision decide(RoomCommand command) {
        if (closed) {
            return Decision.refuse(Refusal.CLOSED);
        }
        return switch (command) {
            case RoomCommand.OfPupil pupil -> new PupilRules(this).decide(pupil);
            case RoomCommand.OfTeacher teacher -> new TeacherRules(this).decide(teacher);
            case RoomCommand.Join join -> new JoinRules(this).decide(join);
            case RoomCommand.AskTakeOver ask -> new JoinRules(this).decide(ask);
            case RoomCommand.TimeUp(long at) -> timeUp(at);
        };
    }

    private Decision timeUp(long at) {
        OptionalLong end = ends();
        boolean isUp = end.isPresent() && at >= end.getAsLong();
        return isUp ? Decision.accept(new RoomEvent.Ended(at)) : Decision.refuse(Refusal.NOT_NOW);
    }

    /// The round that goes on or is about to begin.
    public Round current() {
        return setup.rounds().get(round);
    }

    /// How long a seat may work in this round, in milliseconds.
    public OptionalLong limit(Seat seat) {
        return limit(seat.extraTime());
    }

    /// How long those may work who take no longer than the others, in milliseconds.
    public OptionalLong limit() {
        return limit(0);
    }

    private OptionalLong limit(int extra) {
        Optional<Duration> limit = current().limit();
        return limit.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of((limit.get().toMillis() + added) * (100 + extra) / 100);
    }

    /// When the round ends by itself: after the time of the last seat and the grace.
    public OptionalLong ends() {
        if (!(phase instanceof Phase.Running(long since, long worked)) || limit().isEmpty()) {
            return OptionalLong.empty();
        }
        long longest =
                seats.present()
                        .mapToLong(seat -> limit(seat).orElse(0))
                        .max()
                        .orElse(limit().getAsLong());
        return OptionalLong.of(since - worked + longest + GRACE);
    }

    /// The state after `event`.
    public RoomState apply(RoomEvent event) {
        return Applying.apply(this, event);
    }

    RoomState counted() {
        return new RoomState(
                id,
                code,
                setup,
                events + 1,
                round,
                run,
                phase,
                added,
                locked,
                marksShown,
                closed,
                seats);
    }

    RoomState with(CodeChanged changed) {
        return new RoomState(
                id,
                changed.code(),
                setup,
                events,
                round,
                run,
                phase,
                added,
                locked,
                marksShown,
                closed,
                seats);
    }

    RoomState with(Phase other) {
        return new RoomState(
                id,
                code,
                setup,
                events,
                round,
                run,
                other,
                added,
                locked,
                marksShown,
                closed,
                seats);
    }

    RoomState with(Seats others) {
        return new RoomState(
                id,
                code,
                setup,
                events,
                round,
                run,
                phase,
                added,
                locked,
                marksShown,
                closed,
                others);
    }

    RoomState withAdded(long more) {
        return new RoomState(
                id,
                code,
                setup,
                events,
                round,
                run,
                phase,
                added + more,
                locked,
                marksShown,
                closed,
                seats);
    }

    RoomState withLocked(boolean on) {
        return new RoomState(
                id, code, setup, events, round, run, phase, added, on, marksShown, closed, seats);
    }

    RoomState withMarksShown(boolean on) {
        return new RoomState(
                id, code, setup, events, round, run, phase, added, locked, on, closed, seats);
    }

    RoomState gone() {
        return new RoomState(
                id, code, setup, events, round, run, phase, added, locked, marksShown, true, seats);
    }

    RoomState before(int nextRound) {
        int answers = setup.rounds().get(nextRound).activity().answers();
        return new RoomState(
                id,
                code,
                setup,
                events,
                nextRound,
                run + 1,
                new Phase.Waiting(),
                0,
                locked,
                marksShown,
                closed,
                seats.changeAll(seat -> seat.before(answers)));
    }
}
