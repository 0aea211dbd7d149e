package tamabako.desk.room.page;

import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import tamabako.desk.room.Decision;
import tamabako.desk.room.Phase;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.journal.Outcome;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.Languages;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;

/// The pages of a pupil at a seat.
final class SeatPages {

    private final Rooms rooms;
    private final Live live;
    private final ShownPages shown;
    private final AnswersForm answers;

    SeatPages(Rooms rooms, Live live, ShownPages shown, InstantSource clock) {
        this.rooms = rooms;
        this.live = live;
        this.shown = shown;
        this.answers = new AnswersForm(rooms, live, clock);
    }

    /// Sends the tablet on in the language that the pupil reads.
    Reply hello(Request request) {
        String to = "/seat/" + request.part("id");
        String language =
                SeatPass.of(request.caller())
                        .flatMap(pass ->
                                rooms.find(request.part("id"))
                                        .flatMap(room -> language(room, pass)))
                        .orElse("");
        if (!language.matches("[a-z]{2,3}")) {
            return Reply.seeOther(to);
        }
        String cookie =
                "%s=%s; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict"
                        .formatted(Languages.COOKIE, language);
        return new Reply.SeeOther(to, Map.of("Set-Cookie", cookie));
    }

    private static Optional<String> language(RoomState room, SeatPass pass) {
        return room.seats()
                .find(pass.seat())
                .flatMap(seat -> room.setup().findPupil(seat.pupil()))
                .map(pupil -> pupil.language());
    }

    /// A tablet that was away when its room was closed comes here too, to hand in what it has.
    Reply show(Request request) {
        return withSeat(
                rooms.findKept(request.part("id")),
                request,
                (room, seat) ->
                        Reply.page(
                                "room/seat.jte",
                                Map.of(
                                        "seat",
                                        SeatView.of(
                                                room, seat, live, request.words().language()))));
    }

    Reply state(Request request) {
        return withSeat(
                rooms.findKept(request.part("id")),
                request,
                (room, seat) ->
                        Reply.json(
                                SeatView.of(room, seat, live, request.words().language()).state()));
    }

    /// The problems, which nobody sees before the round begins, and never their answers.
    Reply problems(Request request) {
        return withSeat(
                request,
                (room, seat) -> {
                    if (room.phase() instanceof Phase.Waiting) {
                        return Sorry.reply(Refusal.NOT_BEGUN, "/seat/" + room.id());
                    }
                    return Reply.page(
                            "room/problems.jte",
                            Map.of("problems", AskedView.of(room, request.words().language())));
                });
    }

    /// The numbers that this tablet shows, from the moment that the teacher begins.
    Reply showing(Request request) {
        return withSeat(
                request,
                (room, seat) ->
                        shown.forSeat(room, seat, request.words().language())
                                .orElseGet(() ->
                                        Sorry.reply(Refusal.NOT_BEGUN, "/seat/" + room.id())));
    }

    /// The numbers as a voice says them, from the same moment.
    Reply sound(Request request) {
        return withSeat(
                request,
                (room, seat) ->
                        shown.sound(room, seat, request.words().language())
                                .orElseGet(() ->
                                        Sorry.reply(Refusal.NOT_BEGUN, "/seat/" + room.id())));
    }

    /// The tablet tells how it showed a problem.
    Reply ran(Request request) {
        Optional<SeatPass> pass = SeatPass.of(request.caller());
        String run = request.form().text("run");
        String problem = request.form().text("problem");
        if (pass.isEmpty()) {
            return Sorry.reply(403, "refused.not-yours", "/join");
        }
        if (!run.matches("\\d{1,6}") || !problem.matches("\\d{1,4}")) {
            return Sorry.reply(Refusal.NO_ANSWER, "/join");
        }
        Optional<Outcome> outcome =
                rooms.ask(
                        request.part("id"),
                        new RoomCommand.Report(
                                pass.get().seat(),
                                pass.get().key(),
                                Integer.parseInt(run),
                                Integer.parseInt(problem),
                                request.form().text("exact").equals("1")));
        if (outcome.isEmpty()) {
            return Sorry.reply(Refusal.CLOSED, "/join");
        }
        return outcome.get().decision() instanceof Decision.Refused(Refusal why, _)
                ? Sorry.reply(why, "/join")
                : Reply.json("{}");
    }

    Reply stream(Request request) {
        return withSeat(
                request,
                (room, seat) -> Reply.stream(out -> live.sit(room.id(), seat.number(), out)));
    }

    Reply answers(Request request) {
        return answers.take(request);
    }

    /// The pupil at the old tablet says whether the seat may move.
    Reply move(Request request) {
        Optional<SeatPass> pass = SeatPass.of(request.caller());
        if (pass.isEmpty()) {
            return Sorry.reply(Refusal.NOT_YOURS, "/join");
        }
        boolean yes = request.form().text("yes").equals("1");
        Optional<Outcome> outcome =
                rooms.ask(
                        request.part("id"),
                        new RoomCommand.AgreeToMove(pass.get().seat(), pass.get().key(), yes));
        return outcome.isEmpty()
                ? Sorry.reply(Refusal.CLOSED, "/join")
                : Reply.seeOther("/seat/" + request.part("id"));
    }

    private Reply withSeat(Request request, BiFunction<RoomState, Seat, Reply> then) {
        return withSeat(rooms.find(request.part("id")), request, then);
    }

    private static Reply withSeat(
            Optional<RoomState> room, Request request, BiFunction<RoomState, Seat, Reply> then) {
        if (room.isEmpty()) {
            return Sorry.reply(Refusal.CLOSED, "/join");
        }
        String again = "/join/" + room.get().code();
        Optional<SeatPass> pass = SeatPass.of(request.caller());
        Optional<Seat> seat = pass.flatMap(one -> room.get().seats().find(one.seat()));
        if (seat.isEmpty()) {
            return Sorry.reply(403, "refused.not-yours", "/join");
        }
        return switch (Standing.of(seat.get(), pass.get().key())) {
            case HERE -> then.apply(room.get(), seat.get());
            case ASKING ->
                    new Reply.Page(
                            409,
                            "room/asking.jte",
                            Map.of("name", seat.get().name(), "room", room.get().id()));
            case MOVED -> Sorry.reply(Refusal.MOVED, again);
            case REMOVED -> Sorry.reply(Refusal.REMOVED, again);
            case STRANGER -> Sorry.reply(403, "refused.not-yours", "/join");
        };
    }
}
