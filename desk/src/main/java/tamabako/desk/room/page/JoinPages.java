package tamabako.desk.room.page;

import java.time.Duration;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import tamabako.desk.room.Decision;
import tamabako.desk.room.Expected;
import tamabako.desk.room.JoinCode;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.journal.Outcome;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;

/// Coming into a room: the code, the name, and the seat.
final class JoinPages {

    /// A school often has one address for all; the code is long enough for so many tries a minute.
    private static final int CODES_A_MINUTE = 30;

    private static final int CODES_OF_ALL_A_MINUTE = 600;

    private static final int PINS_A_MINUTE = 5;

    private static final String ALL = "all";

    private final Rooms rooms;
    private final Guesses codes;
    private final Guesses codesOfAll;
    private final Guesses pins;

    JoinPages(Rooms rooms, InstantSource clock) {
        this.rooms = rooms;
        this.codes = new Guesses(CODES_A_MINUTE, Duration.ofMinutes(1), clock);
        this.codesOfAll = new Guesses(CODES_OF_ALL_A_MINUTE, Duration.ofMinutes(1), clock);
        this.pins = new Guesses(PINS_A_MINUTE, Duration.ofMinutes(1), clock);
    }

    Reply ask(Request request) {
        return Reply.page("room/join.jte", Map.of("code", "", "wrong", false));
    }

    Reply take(Request request) {
        String code = JoinCode.clean(request.form().text("code"));
        return withRoom(request, code, (_, _) -> Reply.seeOther("/join/" + code));
    }

    Reply names(Request request) {
        return withRoom(request, code(request), (room, _) -> names(room, 200, ""));
    }

    private static String code(Request request) {
        return JoinCode.clean(request.part("code"));
    }

    private static Reply names(RoomState room, int status, String fault) {
        return new Reply.Page(status, "room/names.jte", Map.of("names", NamesView.of(room, fault)));
    }

    /// A room that is gone and one that never was look the same.
    private Reply withRoom(
            Request request, String code, BiFunction<RoomState, Request, Reply> then) {
        String from = request.caller().address();
        if (codes.isTooMany(from) || codesOfAll.isTooMany(ALL)) {
            return Sorry.reply(429, "guesses", "/join");
        }
        Optional<RoomState> room =
                code.length() == JoinCode.LENGTH ? rooms.findByCode(code) : Optional.empty();
        if (room.isEmpty()) {
            codes.wrong(from);
            codesOfAll.wrong(ALL);
            return new Reply.Page(404, "room/join.jte", Map.of("code", shown(code), "wrong", true));
        }
        return then.apply(room.get(), request);
    }

    private static String shown(String code) {
        return code.length() <= 2 * JoinCode.LENGTH ? code : code.substring(0, JoinCode.LENGTH);
    }

    Reply sit(Request request) {
        return withRoom(request, code(request), (room, _) -> named(room, request, this::join));
    }

    Reply move(Request request) {
        return withRoom(request, code(request), (room, _) -> named(room, request, this::askMove));
    }

    /// Who wants to sit down.
    private record Name(String name, String pupil, String language, int extraTime) {}

    private interface Sitting {
        Reply sit(RoomState room, Request request, Name name);
    }

    private Reply named(RoomState room, Request request, Sitting sitting) {
        String pupil = request.form().text("pupil");
        if (pupil.isEmpty()) {
            String alias = request.form().text("alias");
            return room.setup().aliases()
                    ? sitting.sit(room, request, new Name(alias, "", "", 0))
                    : names(room, 400, "room.names.pick");
        }
        Optional<Expected> expected = room.setup().findPupil(pupil);
        if (expected.isEmpty()) {
            return names(room, 400, "room.names.pick");
        }
        String who = room.id() + "/" + pupil;
        if (pins.isTooMany(who)) {
            return names(room, 429, "room.pin.guesses");
        }
        Expected one = expected.get();
        if (!one.pin().isEmpty() && !one.pin().equals(request.form().text("pin"))) {
            pins.wrong(who);
            return names(room, 403, "room.pin.wrong");
        }
        return sitting.sit(
                room, request, new Name(one.name(), pupil, one.language(), one.extraTime()));
    }

    private Reply join(RoomState room, Request request, Name name) {
        String secret = SeatPass.freshSecret();
        RoomCommand.Join join =
                new RoomCommand.Join(
                        name.name(), name.pupil(), SeatPass.key(secret), name.extraTime());
        Optional<Outcome> outcome = rooms.ask(room.id(), join);
        if (outcome.isEmpty()) {
            return Sorry.reply(Refusal.CLOSED, "/join");
        }
        return switch (outcome.get().decision()) {
            case Decision.Refused(Refusal why, _) when why == Refusal.NAME_TAKEN ->
                    new Reply.Page(
                            409,
                            "room/taken.jte",
                            Map.of("code", room.code(), "form", TakenForm.of(request)));
            case Decision.Refused(Refusal why, _) when why == Refusal.BAD_NAME ->
                    names(room, 400, "room.refused.bad-name.what");
            case Decision.Refused(Refusal why, _) -> Sorry.reply(why, "/join/" + room.code());
            case Decision.Accepted(var events) -> {
                RoomEvent.Joined joined = (RoomEvent.Joined) events.getFirst();
                yield welcome(room, request, new SeatPass(joined.seat(), secret));
            }
        };
    }

    private static Reply welcome(RoomState room, Request request, SeatPass pass) {
        return new Reply.SeeOther(
                "/seat/" + room.id() + "/hello",
                Map.of("Set-Cookie", pass.cookie(room.id(), request.caller())));
    }

    private Reply askMove(RoomState room, Request request, Name name) {
        Optional<Seat> seat =
                room.seats()
                        .present()
                        .filter(one ->
                                name.pupil().isEmpty()
                                        ? one.name().equalsIgnoreCase(name.name())
                                        : one.pupil().equals(name.pupil()))
                        .findFirst();
        if (seat.isEmpty()) {
            return join(room, request, name);
        }
        SeatPass pass = new SeatPass(seat.get().number(), SeatPass.freshSecret());
        rooms.ask(room.id(), new RoomCommand.AskTakeOver(pass.seat(), pass.key()));
        return welcome(room, request, pass);
    }
}
