package tamabako.desk.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/// What the teacher may do when.
record TeacherRules(RoomState room) {

    /// The most time that is added at once, in seconds.
    private static final int MOST_ADDED = 3_600;

    private static final int MOST_EXTRA_TIME = 300;

    Decision decide(RoomCommand.OfTeacher command) {
        return switch (command) {
            case RoomCommand.Start(long at) ->
                    when(
                            room.phase() instanceof Phase.Waiting
                                    || room.phase() instanceof Phase.Paused,
                            new RoomEvent.Started(at));
            case RoomCommand.Pause(long at) ->
                    when(room.phase() instanceof Phase.Running, new RoomEvent.Paused(at));
            case RoomCommand.AddTime(int seconds) -> addTime(seconds);
            case RoomCommand.End(long at) -> when(isGoing(), new RoomEvent.Ended(at));
            case RoomCommand.Next(long at) -> next(at);
            case RoomCommand.Repeat(long at) -> set(room.round(), at);
            case RoomCommand.Lock(boolean on) ->
                    unless(room.locked() == on, new RoomEvent.Locked(on));
            case RoomCommand.ShowMarks(boolean on) ->
                    unless(room.marksShown() == on, new RoomEvent.MarksShown(on));
            case RoomCommand.NewCode(String code) ->
                    Decision.accept(new RoomEvent.CodeChanged(code));
            case RoomCommand.Remove(int seat) ->
                    present(seat, () -> Decision.accept(new RoomEvent.Removed(seat)));
            case RoomCommand.Rename(int seat, String name) ->
                    present(seat, () -> rename(seat, name));
            case RoomCommand.GiveExtraTime(int seat, int percent) ->
                    percent < 0 || percent > MOST_EXTRA_TIME
                            ? Decision.refuse(Refusal.OUT_OF_RANGE)
                            : present(
                                    seat,
                                    () ->
                                            Decision.accept(
                                                    new RoomEvent.ExtraTimeGiven(seat, percent)));
            case RoomCommand.GiveWay(int seat, Way way) ->
                    present(seat, () -> Decision.accept(new RoomEvent.WayGiven(seat, way)));
            case RoomCommand.SayRow row -> new TurnRules(room).decide(row);
            case RoomCommand.CountHands hands -> new TurnRules(room).decide(hands);
            case RoomCommand.LetMove(int seat, boolean yes) ->
                    present(seat, () -> TakeOver.decide(room, seat, yes));
            case RoomCommand.AdmitLate(int seat) ->
                    present(seat, () -> new Decision.Accepted(admitted(seat)));
            case RoomCommand.LeaveOut(int seat) ->
                    present(seat, () -> Decision.accept(new RoomEvent.LeftOut(seat)));
            case RoomCommand.TakeTurn turn -> new TurnRules(room).decide(turn);
            case RoomCommand.Close(long at) -> close(at);
        };
    }

    private boolean isGoing() {
        return room.phase() instanceof Phase.Running || room.phase() instanceof Phase.Paused;
    }

    private static Decision when(boolean can, RoomEvent event) {
        return can ? Decision.accept(event) : Decision.refuse(Refusal.NOT_NOW);
    }

    private static Decision unless(boolean isSo, RoomEvent event) {
        return isSo ? Decision.accept() : Decision.accept(event);
    }

    private Decision addTime(int seconds) {
        if (room.limit().isEmpty()) {
            return Decision.refuse(Refusal.NO_LIMIT);
        }
        return seconds < 1 || seconds > MOST_ADDED
                ? Decision.refuse(Refusal.OUT_OF_RANGE)
                : when(
                        !(room.phase() instanceof Phase.Ended),
                        new RoomEvent.TimeAdded(1_000L * seconds));
    }

    private Decision next(long at) {
        return room.round() + 1 >= room.setup().rounds().size()
                ? Decision.refuse(Refusal.LAST_ROUND)
                : set(room.round() + 1, at);
    }

    private Decision set(int round, long at) {
        return after(at, new RoomEvent.RoundSet(round));
    }

    /// A round that goes on is ended first, so that its answers are kept.
    private Decision after(long at, RoomEvent event) {
        List<RoomEvent> events = new ArrayList<>();
        if (isGoing()) {
            events.add(new RoomEvent.Ended(at));
        }
        events.add(event);
        return new Decision.Accepted(events);
    }

    /// Where nobody ever sat nothing can come, and nothing has to stay.
    private Decision close(long at) {
        List<RoomEvent> events = new ArrayList<>(after(at, new RoomEvent.Closed(at)).events());
        if (room.seats().count() == 0) {
            events.add(new RoomEvent.Cleared());
        }
        return new Decision.Accepted(events);
    }

    private List<RoomEvent> admitted(int number) {
        return room.seats().find(number).orElseThrow().later().stream()
                .<RoomEvent>map(later -> new RoomEvent.LetIn(number, later))
                .toList();
    }

    private Decision rename(int seat, String name) {
        return SeatName.clean(name)
                .map(clean -> Decision.accept(new RoomEvent.Renamed(seat, clean)))
                .orElseGet(() -> Decision.refuse(Refusal.BAD_NAME));
    }

    private Decision present(int seat, Supplier<Decision> decision) {
        Optional<Seat> found = room.seats().find(seat).filter(one -> !one.removed());
        return found.isPresent() ? decision.get() : Decision.refuse(Refusal.REMOVED);
    }
}
