package tamabako.desk.room.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import tamabako.desk.call.CallPlan;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Calling;
import tamabako.desk.room.Contest;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Tally;
import tamabako.desk.room.Turn;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;

/// The caller's page of a room: the voice speaks on the teacher's machine, and the tablets answer.
final class CallerPages {

    private final Rooms rooms;
    private final TeacherPages teacher;

    /// @param teacher whose view of the room it shares
    CallerPages(Rooms rooms, TeacherPages teacher) {
        this.rooms = rooms;
        this.teacher = teacher;
    }

    Reply show(Request request) {
        return withCall(
                request,
                call -> Reply.page("room/caller.jte", Map.of("caller", view(request, call))));
    }

    /// The part that changes.
    Reply part(Request request) {
        return withCall(
                request,
                call -> Reply.page("room/caller-part.jte", Map.of("caller", view(request, call))));
    }

    Reply sound(Request request) {
        String number = request.query().text("n");
        return withCall(
                request,
                call ->
                        call.plan()
                                .sound(
                                        number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0,
                                        request.query().has("save")));
    }

    /// A room whose round is called.
    private record Call(RoomState room, CallPlan plan) {

        static Call of(RoomState room, Activity.Called called) {
            Calling calling = called.calling();
            return new Call(
                    room,
                    new CallPlan(
                            called.columns(),
                            calling.language(),
                            calling.wish(),
                            calling.paces(),
                            calling.contest().word()));
        }
    }

    private Reply withCall(Request request, Function<Call, Reply> then) {
        return rooms.find(request.part("id"))
                .map(room ->
                        room.current().activity() instanceof Activity.Called called
                                ? then.apply(Call.of(room, called))
                                : Reply.seeOther("/room/" + room.id()))
                .orElseGet(() -> Reply.trouble(404, "no-room"));
    }

    private CallerView view(Request request, Call call) {
        RoomState room = call.room();
        String sound = "/room/" + room.id() + "/call/sound?n=";
        String json =
                call.plan().json(request.words(), sound, Math.max(0, first(room.turn(), call)));
        return new CallerView(teacher.view(request, room), room.run(), json, notes(room));
    }

    /// The call that is on; the next one where its answer was told already.
    private static int first(Turn turn, Call call) {
        boolean isDone = turn.step() == Turn.Step.REVEALED;
        return Math.min(turn.problem() + (isDone ? 1 : 0), call.plan().columns().size() - 1);
    }

    /// The count as the tally of the page notes it: pairs of the call and how many, such as
    /// `[[0,12],[1,9]]`.
    private static String notes(RoomState room) {
        Tally tally = Tally.of(room);
        boolean isContest = room.current().activity().contest() != Contest.NONE;
        List<List<Long>> notes = new ArrayList<>();
        if (isContest) {
            notes.add(List.of(0L, tally.began()));
        }
        for (int i = 0; i < tally.left().size(); i++) {
            long hands = isContest ? tally.left().get(i) : Tally.right(room, i);
            notes.add(List.of(i + 1L, hands));
        }
        return notes.toString();
    }
}
