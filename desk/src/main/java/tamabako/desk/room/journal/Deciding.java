package tamabako.desk.room.journal;

import java.util.ArrayList;
import java.util.List;
import tamabako.desk.room.Decision;
import tamabako.desk.room.Doors;
import tamabako.desk.room.Forgetting;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;
import tamabako.records.RoomLog;
import tamabako.records.RoomLog.Part;

/// The wishes for one room, decided one after another inside the transaction that keeps what comes
/// of them. Nobody sees any of it before [#show].
final class Deciding {

    private final OpenRoom room;
    private final List<Wish> wishes;
    private final List<RoomEvent> happened = new ArrayList<>();
    private final List<RoomEvent> own = new ArrayList<>();
    private final List<Outcome> outcomes = new ArrayList<>();
    private RoomState state;

    Deciding(OpenRoom room, List<Wish> wishes) {
        this.room = room;
        this.wishes = wishes;
        this.state = room.state();
    }

    /// Decides and keeps.
    void keep(RoomLog log, KeptWork work) {
        boolean isAsked = wishes.stream().anyMatch(wish -> wish.command().isPresent());
        boolean isOpen =
                !isGone() && (isAsked ? log.lock(state.id()) : log.find(state.id()).isPresent());
        if (!isOpen) {
            gone();
            return;
        }
        log.after(state.id(), state.events())
                .forEach(part -> EventLines.read(part.events()).forEach(this::happen));
        for (Wish wish : wishes) {
            Decision decision = wish.command().map(this::decide).orElseGet(Decision::accept);
            for (RoomEvent event : decision.events()) {
                happen(event);
                own.add(event);
                work.keep(state, event);
            }
            outcomes.add(new Outcome(decision, state));
        }
        write(log);
    }

    private Decision decide(RoomCommand command) {
        return state.decide(command);
    }

    private void happen(RoomEvent event) {
        state = state.apply(event);
        happened.add(event);
    }

    private void gone() {
        if (!isGone()) {
            happen(new RoomEvent.Cleared());
        }
        wishes.forEach(_ -> outcomes.add(new Outcome(Decision.refuse(Refusal.CLOSED), state)));
    }

    private boolean isGone() {
        return state.doors() instanceof Doors.Gone;
    }

    private void write(RoomLog log) {
        if (own.isEmpty()) {
            return;
        }
        if (isGone()) {
            log.close(state.id());
            return;
        }
        log.append(state.id(), new Part(state.events(), EventLines.write(own)));
        if (own.stream().anyMatch(RoomEvent.Forgotten.class::isInstance)) {
            forget(log);
        }
        own.stream()
                .filter(RoomEvent.CodeChanged.class::isInstance)
                .reduce((_, last) -> last)
                .ifPresent(_ -> log.changeCode(state.id(), state.code()));
    }

    /// Whoever is forgotten leaves what was written down before, too.
    private void forget(RoomLog log) {
        List<Integer> seats =
                own.stream()
                        .filter(RoomEvent.Forgotten.class::isInstance)
                        .flatMap(event -> ((RoomEvent.Forgotten) event).seats().stream())
                        .toList();
        log.changeSetup(state.id(), SetupJson.write(state.setup()));
        for (Part part : log.after(state.id(), 0)) {
            List<RoomEvent> blank =
                    EventLines.read(part.events()).stream()
                            .map(event -> Forgetting.blank(event, seats))
                            .toList();
            log.change(state.id(), new Part(part.number(), EventLines.write(blank)));
        }
    }

    /// Lets everybody see what was kept, and tells those who wished.
    void show() {
        room.show(state, happened);
        for (int i = 0; i < wishes.size(); i++) {
            wishes.get(i).outcome().complete(outcomes.get(i));
        }
    }
}
