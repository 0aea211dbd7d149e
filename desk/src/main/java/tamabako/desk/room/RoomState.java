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
/// @param now the run of a round that goes on or is about to begin
/// @param locked whether nobody may join any more
/// @param marksShown whether the projector shows right and wrong
/// @param closed whether the room is gone
/// @param seats who sits there
public record RoomState(
        String id,
        String code,
        Setup setup,
        long events,
        Run now,
        boolean locked,
        boolean marksShown,
        boolean closed,
        Seats seats) {

    /// So long after its end a round still takes what was under way, in milliseconds.
    public static final long GRACE = 3_000;

    /// A room that was just opened.
    public static RoomState open(String id, String code, Setup setup) {
        return new RoomState(id, code, setup, 0, Run.FIRST, false, false, false, Seats.NONE);
    }

    /// What comes of a wish.
    public Decision decide(RoomCommand command) {
        if (closed) {
            return Decision.refuse(Refusal.CLOSED);
        }
        return switch (command) {
            case RoomCommand.Forget(String pupil) -> Forgetting.decide(this, pupil);
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

    /// Which round of the setup goes on or is about to begin, from 0.
    public int round() {
        return now.round();
    }

    /// How many rounds were set so far, repeats too, from 1.
    public int run() {
        return now.number();
    }

    /// Where the round stands.
    public Phase phase() {
        return now.phase();
    }

    /// Which problem is on, where they come one after another.
    public Turn turn() {
        return now.turn();
    }

    /// The round that goes on or is about to begin.
    public Round current() {
        return setup.rounds().get(now.round());
    }

    /// The round of that run, from 1 to [#run].
    public Round roundOf(int run) {
        return run == run() ? current() : setup.rounds().get(now.before().get(run - 1));
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
                : OptionalLong.of((limit.get().toMillis() + now.added()) * (100 + extra) / 100);
    }

    /// When the round ends by itself: after the time of the last seat and the grace.
    public OptionalLong ends() {
        if (!(phase() instanceof Phase.Running(long since, long worked)) || limit().isEmpty()) {
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
        return new RoomState(id, code, setup, events + 1, now, locked, marksShown, closed, seats);
    }

    RoomState with(CodeChanged changed) {
        return new RoomState(
                id, changed.code(), setup, events, now, locked, marksShown, closed, seats);
    }

    RoomState with(Setup other) {
        return new RoomState(id, code, other, events, now, locked, marksShown, closed, seats);
    }

    RoomState with(Run other) {
        return new RoomState(id, code, setup, events, other, locked, marksShown, closed, seats);
    }

    RoomState with(Seats others) {
        return new RoomState(id, code, setup, events, now, locked, marksShown, closed, others);
    }

    RoomState withLocked(boolean on) {
        return new RoomState(id, code, setup, events, now, on, marksShown, closed, seats);
    }

    RoomState withMarksShown(boolean on) {
        return new RoomState(id, code, setup, events, now, locked, on, closed, seats);
    }

    RoomState gone() {
        return new RoomState(id, code, setup, events, now, locked, marksShown, true, seats);
    }

    RoomState before(int nextRound) {
        int answers = setup.rounds().get(nextRound).activity().answers();
        return with(now.then(nextRound)).with(seats.changeAll(seat -> seat.before(answers)));
    }
}
