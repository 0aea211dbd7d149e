package tamabako.desk.room.page;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.desk.room.Decision;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.journal.Outcome;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;

/// Takes messages of a tablet, one or many: the fields `number`, `run`, `problem`, `written` and
/// `fresh` come once for each, in the order of the numbers. The problem `end` hands the round in.
///
/// The desk marks, and the desk's clock counts; a form that brings anything else, such as a mark,
/// is refused.
final class AnswersForm {

    private static final Set<String> FIELDS =
            Set.of("number", "run", "problem", "written", "fresh");

    private static final int MOST = 300;

    private final Rooms rooms;
    private final Live live;
    private final InstantSource clock;

    AnswersForm(Rooms rooms, Live live, InstantSource clock) {
        this.rooms = rooms;
        this.live = live;
        this.clock = clock;
    }

    Reply take(Request request) {
        Optional<SeatPass> pass = SeatPass.of(request.caller());
        if (pass.isEmpty()) {
            return told(403, Optional.of(Refusal.NOT_YOURS), Optional.empty(), 0);
        }
        Optional<List<RoomCommand>> messages = read(request.form(), pass.get());
        if (messages.isEmpty()) {
            return told(400, Optional.of(Refusal.NO_ANSWER), Optional.empty(), 0);
        }
        Optional<List<Outcome>> outcomes = rooms.ask(request.part("id"), messages.get());
        return outcomes.map(all -> told(all, pass.get().seat()))
                .orElseGet(() -> told(409, Optional.of(Refusal.CLOSED), Optional.empty(), 0));
    }

    private Optional<List<RoomCommand>> read(Fields form, SeatPass pass) {
        int count = form.all("number").size();
        boolean isWhole =
                count > 0
                        && count <= MOST
                        && FIELDS.containsAll(form.names())
                        && FIELDS.stream().allMatch(field -> form.all(field).size() == count);
        if (!isWhole) {
            return Optional.empty();
        }
        List<RoomCommand> messages = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Optional<RoomCommand> message = message(form, i, pass);
            if (message.isEmpty()) {
                return Optional.empty();
            }
            messages.add(message.get());
        }
        return Optional.of(messages);
    }

    private Optional<RoomCommand> message(Fields form, int i, SeatPass pass) {
        String number = form.all("number").get(i);
        String run = form.all("run").get(i);
        String problem = form.all("problem").get(i);
        if (!number.matches("\\d{1,6}")
                || !run.matches("\\d{1,6}")
                || !problem.matches("\\d{1,4}|end")) {
            return Optional.empty();
        }
        long at = clock.millis();
        if (problem.equals("end")) {
            return Optional.of(
                    new RoomCommand.HandIn(
                            pass.seat(),
                            pass.key(),
                            Integer.parseInt(run),
                            Integer.parseInt(number),
                            at));
        }
        return Optional.of(
                new RoomCommand.Answer(
                        pass.seat(),
                        pass.key(),
                        Integer.parseInt(run),
                        Integer.parseInt(number),
                        Integer.parseInt(problem),
                        form.all("written").get(i),
                        form.all("fresh").get(i).equals("1"),
                        at));
    }

    private Reply told(List<Outcome> outcomes, int seat) {
        Optional<Refusal> refused =
                outcomes.stream()
                        .map(Outcome::decision)
                        .filter(Decision.Refused.class::isInstance)
                        .map(decision -> ((Decision.Refused) decision).why())
                        .findFirst();
        RoomState room = outcomes.getLast().room();
        boolean isStranger = refused.filter(why -> why == Refusal.NOT_YOURS).isPresent();
        int taken = isStranger ? 0 : room.seats().find(seat).map(Seat::taken).orElse(0);
        int status = isStranger ? 403 : refused.isPresent() ? 409 : 200;
        return told(status, refused, Optional.of(room), taken);
    }

    /// `taken` is the number of the last message that is on the disk.
    private Reply told(int status, Optional<Refusal> refused, Optional<RoomState> room, int taken) {
        String round = room.map(live::round).orElse("null");
        String json =
                "{\"taken\":%d,\"refused\":\"%s\",\"round\":%s}"
                        .formatted(taken, refused.map(Refusal::word).orElse(""), round);
        return new Reply.Bytes(
                status,
                "application/json",
                Map.of(),
                json.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
