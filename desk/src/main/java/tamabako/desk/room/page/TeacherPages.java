package tamabako.desk.room.page;

import java.time.InstantSource;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import tamabako.desk.room.Decision;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Turn;
import tamabako.desk.room.Way;
import tamabako.desk.room.journal.Outcome;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;

/// The teacher's page of a room, and what its buttons do.
final class TeacherPages {

    private final Rooms rooms;
    private final Live live;
    private final SlipGroups slips = new SlipGroups();
    private final InstantSource clock;

    TeacherPages(Rooms rooms, Live live, InstantSource clock) {
        this.rooms = rooms;
        this.live = live;
        this.clock = clock;
    }

    Reply show(Request request) {
        return page(request, "room/teacher.jte");
    }

    /// The part that changes.
    Reply part(Request request) {
        return page(request, "room/teacher-part.jte");
    }

    private Reply page(Request request, String template) {
        return withRoom(
                request,
                room -> Reply.page(template, Map.of("room", view(request, room), "fault", "")));
    }

    RoomView view(Request request, RoomState room) {
        return RoomView.of(
                room,
                live,
                slips.of(room, request.words()),
                JoinAddress.of(request.caller()),
                request.words().language());
    }

    Reply pins(Request request) {
        return withRoom(
                request, room -> Reply.page("room/pins.jte", Map.of("room", view(request, room))));
    }

    Reply stream(Request request) {
        return withRoom(request, room -> Reply.stream(out -> live.look(room.id(), out)));
    }

    /// What came when it could not count any more, also after the room was closed.
    Reply late(Request request) {
        return rooms.findKept(request.part("id"))
                .map(room -> Reply.page("room/late.jte", Map.of("late", LateView.of(room))))
                .orElseGet(() -> Reply.trouble(404, "no-room"));
    }

    private Reply withRoom(Request request, Function<RoomState, Reply> then) {
        return rooms.find(request.part("id"))
                .map(then)
                .orElseGet(() -> Reply.trouble(404, "no-room"));
    }

    /// The buttons that are for the whole room.
    Reply command(Request request) {
        return command(request.form())
                .map(command -> carryOut(request, command))
                .orElseGet(() -> Reply.trouble(400, "no-such-button"));
    }

    private Optional<RoomCommand> command(Fields form) {
        long now = clock.millis();
        return switch (form.text("do")) {
            case "start" -> Optional.of(new RoomCommand.Start(now));
            case "pause" -> Optional.of(new RoomCommand.Pause(now));
            case "add" -> number(form, "seconds").map(RoomCommand.AddTime::new);
            case "end" -> Optional.of(new RoomCommand.End(now));
            case "next" -> Optional.of(new RoomCommand.Next(now));
            case "repeat" -> Optional.of(new RoomCommand.Repeat(now));
            case "begin" -> turn(form, Turn.Move.BEGIN, now);
            case "open" -> turn(form, Turn.Move.OPEN, now);
            case "spoil" -> turn(form, Turn.Move.SPOIL, now);
            case "reveal" -> turn(form, Turn.Move.REVEAL, now);
            case "said" ->
                    number(form, "problem")
                            .flatMap(problem ->
                                    number(form, "rows")
                                            .map(rows -> new RoomCommand.SayRow(problem, rows)));
            case "hands" ->
                    number(form, "call")
                            .flatMap(call ->
                                    number(form, "hands")
                                            .map(hands ->
                                                    new RoomCommand.CountHands(call - 1, hands)));
            case "lock" -> Optional.of(new RoomCommand.Lock(true));
            case "unlock" -> Optional.of(new RoomCommand.Lock(false));
            case "show-marks" -> Optional.of(new RoomCommand.ShowMarks(true));
            case "hide-marks" -> Optional.of(new RoomCommand.ShowMarks(false));
            case "new-code" -> Optional.of(new RoomCommand.NewCode(rooms.freeCode()));
            case "close" -> Optional.of(new RoomCommand.Close(now));
            default -> Optional.empty();
        };
    }

    private static Optional<RoomCommand> turn(Fields form, Turn.Move move, long now) {
        return number(form, "problem").map(problem -> new RoomCommand.TakeTurn(move, problem, now));
    }

    /// The buttons that are for one seat.
    Reply seat(Request request) {
        Fields form = request.form();
        return number(form, "seat")
                .flatMap(seat -> seat(form, seat))
                .map(command -> carryOut(request, command))
                .orElseGet(() -> Reply.trouble(400, "no-such-button"));
    }

    private static Optional<RoomCommand> seat(Fields form, int seat) {
        return switch (form.text("do")) {
            case "remove" -> Optional.of(new RoomCommand.Remove(seat));
            case "rename" -> Optional.of(new RoomCommand.Rename(seat, form.text("name")));
            case "extra" ->
                    number(form, "percent")
                            .map(percent -> new RoomCommand.GiveExtraTime(seat, percent));
            case "way" -> way(form).map(way -> new RoomCommand.GiveWay(seat, way));
            case "let-move" -> Optional.of(new RoomCommand.LetMove(seat, true));
            case "keep-here" -> Optional.of(new RoomCommand.LetMove(seat, false));
            case "admit-late" -> Optional.of(new RoomCommand.AdmitLate(seat));
            case "leave-out" -> Optional.of(new RoomCommand.LeaveOut(seat));
            default -> Optional.empty();
        };
    }

    private static Optional<Way> way(Fields form) {
        return Arrays.stream(Way.values())
                .filter(way -> way.word().equals(form.text("way")))
                .findFirst();
    }

    private static Optional<Integer> number(Fields form, String field) {
        String typed = form.text(field);
        return typed.matches("\\d{1,6}") ? Optional.of(Integer.parseInt(typed)) : Optional.empty();
    }

    private Reply carryOut(Request request, RoomCommand command) {
        Optional<Outcome> outcome = rooms.ask(request.part("id"), command);
        boolean isClosed =
                outcome.isEmpty()
                        || outcome.get().decision().equals(Decision.refuse(Refusal.CLOSED));
        if (isClosed) {
            return Reply.trouble(404, "no-room");
        }
        if (outcome.get().decision() instanceof Decision.Refused(Refusal why, _)) {
            return new Reply.Page(
                    409,
                    "room/teacher.jte",
                    Map.of(
                            "room",
                            view(request, outcome.get().room()),
                            "fault",
                            "room.refused." + why.word()));
        }
        String back =
                switch (request.form().text("to")) {
                    case "call" -> "/call";
                    case "board" -> "/board";
                    case "late" -> "/late";
                    default -> "";
                };
        return Reply.seeOther(
                command instanceof RoomCommand.Close
                        ? "/rooms"
                        : "/room/" + request.part("id") + back);
    }
}
