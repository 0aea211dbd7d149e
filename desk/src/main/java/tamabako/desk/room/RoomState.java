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
/// @param doors whether the room is open
/// @param seats who sits there
public record RoomState(
        String id,
        String code,
        Setup setup,
        long events,
        Run now,
        boolean locked,
        boolean marksShown,
        Doors doors,
        Seats seats) {

    /// So long after its end a round still takes what was under way, in milliseconds.
    public static final long GRACE = 3_000;

    /// So long after it was closed a room still takes what is on the tablets, in milliseconds.
    static final long KEPT = Duration.ofHours(36).toMillis();

    /// A room that was just opened.
    public static RoomState open(String id, String code, Setup setup) {
        return new RoomState(
                id, code, setup, 0, Run.FIRST, false, false, new Doors.Open(), Seats.NONE);
    }

    /// What comes of a wish.
    public Decision decide(RoomCommand command) {
        if (closed()) {
            return new ClosedRules(this).decide(command);
        }
        return switch (command) {
            case RoomCommand.Forget(String pupil) -> Forgetting.decide(this, pupil);
            case RoomCommand.OfPupil pupil -> new PupilRules(this).decide(pupil);
            case RoomCommand.OfTeacher teacher -> new TeacherRules(this).decide(teacher);
            case RoomCommand.Join join -> new JoinRules(this).decide(join);
            case RoomCommand.AskTakeOver ask -> new JoinRules(this).decide(ask);
            case RoomCommand.TimeUp(long at) -> timeUp(at);
            case RoomCommand.ClearAway _ -> Decision.refuse(Refusal.NOT_NOW);
        };
    }

    private Decision timeUp(long at) {
        OptionalLong end = ends();
        boolean isUp = end.isPresent() && at >= end.getAsLong();
        return isUp ? Decision.accept(new RoomEvent.Ended(at)) : Decision.refuse(Refusal.NOT_NOW);
    }

    /// Whether nobody works here any more.
    public boolean closed() {
        return !(doors instanceof Doors.Open);
    }

    /// Whether answers that came when they could not count any more wait for the teacher.
    public boolean waits() {
        return seats.present().anyMatch(seat -> !seat.later().isEmpty());
    }

    /// When nothing of a closed room has to be kept any more: some time after it was closed, if
    /// nothing waits for the teacher.
    public OptionalLong cleared() {
        return doors instanceof Doors.Closed(long at) && !waits()
                ? OptionalLong.of(at + KEPT)
                : OptionalLong.empty();
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

    /// How many rows of the problem that is on were said, where it is called.
    public int said() {
        return now.said();
    }

    /// The raised hands that were counted in this run.
    public Hands hands() {
        return now.hands();
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
        return new RoomState(id, code, setup, events + 1, now, locked, marksShown, doors, seats);
    }

    RoomState with(CodeChanged changed) {
        return new RoomState(
                id, changed.code(), setup, events, now, locked, marksShown, doors, seats);
    }

    RoomState with(Setup other) {
        return new RoomState(id, code, other, events, now, locked, marksShown, doors, seats);
    }

    RoomState with(Run other) {
        return new RoomState(id, code, setup, events, other, locked, marksShown, doors, seats);
    }

    RoomState with(Seats others) {
        return new RoomState(id, code, setup, events, now, locked, marksShown, doors, others);
    }

    RoomState withLocked(boolean on) {
        return new RoomState(id, code, setup, events, now, on, marksShown, doors, seats);
    }

    RoomState withMarksShown(boolean on) {
        return new RoomState(id, code, setup, events, now, locked, on, doors, seats);
    }

    RoomState with(Doors others) {
        return new RoomState(id, code, setup, events, now, locked, marksShown, others, seats);
    }

    RoomState before(int nextRound) {
        int answers = setup.rounds().get(nextRound).activity().answers();
        return with(now.then(nextRound)).with(seats.changeAll(seat -> seat.before(answers)));
    }
}
