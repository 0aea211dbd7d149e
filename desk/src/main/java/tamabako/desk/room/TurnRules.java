package tamabako.desk.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// How problems follow one another in a round that goes through them together.
record TurnRules(RoomState room) {

    Decision decide(RoomCommand.TakeTurn wish) {
        if (!room.current().activity().inTurn() || room.phase() instanceof Phase.Ended) {
            return Decision.refuse(Refusal.NOT_NOW);
        }
        return wish.move() == Turn.Move.BEGIN
                ? begin(wish.problem(), wish.at())
                : step(wish.move(), wish.problem(), wish.at());
    }

    /// Rows are said in their order; one that is said again is known.
    Decision decide(RoomCommand.SayRow row) {
        boolean isOn =
                room.current().activity() instanceof Activity.Called called
                        && row.problem() == room.turn().problem()
                        && row.problem() >= 0
                        && row.rows() <= called.columns().get(row.problem()).rows().size()
                        && room.phase() instanceof Phase.Running;
        if (!isOn) {
            return Decision.refuse(Refusal.NOT_NOW);
        }
        return row.rows() <= room.said()
                ? Decision.accept()
                : Decision.accept(new RoomEvent.RowSaid(row.rows()));
    }

    Decision decide(RoomCommand.CountHands count) {
        boolean isCalled =
                room.current().activity() instanceof Activity.Called
                        && count.problem() >= Hands.BEGAN
                        && count.problem() <= room.turn().problem();
        if (!isCalled) {
            return Decision.refuse(Refusal.NOT_NOW);
        }
        return count.hands() < 0 || count.hands() > Hands.MOST
                ? Decision.refuse(Refusal.OUT_OF_RANGE)
                : Decision.accept(new RoomEvent.HandsRaised(count.problem(), count.hands()));
    }

    private Decision begin(int problem, long at) {
        Turn now = room.turn();
        if (problem < now.problem() || problem >= room.current().activity().answers()) {
            return Decision.refuse(Refusal.NOT_NOW);
        }
        List<RoomEvent> events = new ArrayList<>();
        if (!(room.phase() instanceof Phase.Running)) {
            events.add(new RoomEvent.Started(at));
        }
        events.add(
                new RoomEvent.Turned(
                        problem == now.problem()
                                ? now.again(at)
                                : new Turn(problem, 1, Turn.Step.UNDER_WAY, at)));
        return new Decision.Accepted(events);
    }

    private Decision step(Turn.Move move, int problem, long at) {
        Turn now = room.turn();
        if (problem != now.problem() || problem < 0) {
            return Decision.refuse(Refusal.NOT_NOW);
        }
        Turn.Step next =
                switch (move) {
                    case BEGIN, OPEN ->
                            now.step() == Turn.Step.UNDER_WAY ? Turn.Step.ANSWERING : now.step();
                    case SPOIL -> now.step() == Turn.Step.REVEALED ? now.step() : Turn.Step.SPOILED;
                    case REVEAL -> Turn.Step.REVEALED;
                };
        return next == now.step()
                ? Decision.accept()
                : Decision.accept(new RoomEvent.Turned(now.with(next, at)));
    }

    /// Why a problem takes no answer at `at`, if it does not; [Refusal#LATE] where its answer was
    /// told or another problem is on.
    Optional<Refusal> closed(int problem, long at) {
        Turn now = room.turn();
        if (problem > now.problem()) {
            return Optional.of(Refusal.EARLY);
        }
        if (problem < now.problem()) {
            return Optional.of(Refusal.LATE);
        }
        return switch (now.step()) {
            case ANSWERING -> Optional.empty();
            case SPOILED -> Optional.of(Refusal.NOT_COUNTED);
            case UNDER_WAY -> isOut(now, at) ? Optional.empty() : Optional.of(Refusal.EARLY);
            case REVEALED ->
                    at <= now.at() + RoomState.GRACE ? Optional.empty() : Optional.of(Refusal.LATE);
        };
    }

    /// Tablets show by themselves: their last number cannot be out before its time.
    private boolean isOut(Turn now, long at) {
        return room.current().activity() instanceof Activity.Shown shown
                && shown.screen() == Activity.Screen.TABLETS
                && at >= now.at() + shown.lasts(now.problem());
    }
}
