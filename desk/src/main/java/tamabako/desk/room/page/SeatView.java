package tamabako.desk.room.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tamabako.desk.room.Answered;
import tamabako.desk.room.Phase;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.View;

/// A seat as its own tablet sees it.
///
/// @param room the identity of the room
/// @param title what the class sees
/// @param name the pupil's
/// @param number of the seat
/// @param code of the room, for the way back in
/// @param asked whether another tablet asks for the seat
/// @param state all that the page script has to know, as JSON
public record SeatView(
        String room,
        String title,
        String name,
        int number,
        String code,
        boolean asked,
        String state) {

    private static final JsonMapper JSON = new JsonMapper();

    /// What the page script says, by the words after `room.say.`.
    private static final List<String> SAID =
            List.of(
                    "waiting",
                    "running",
                    "paused",
                    "ended",
                    "time-up",
                    "offline",
                    "waiting-to-send",
                    "handed-in",
                    "late",
                    "later",
                    "stale",
                    "replaced",
                    "closed",
                    "right-of",
                    "hand-in",
                    "really",
                    "really-blank");

    static SeatView of(RoomState room, Seat seat, Live live) {
        boolean asked = !seat.keys().asking().isEmpty();
        return new SeatView(
                room.id(),
                room.setup().title(),
                seat.name(),
                seat.number(),
                room.code(),
                asked,
                state(room, seat, live, asked));
    }

    private static String state(RoomState room, Seat seat, Live live, boolean asked) {
        boolean ended = room.phase() instanceof Phase.Ended;
        Map<String, Object> state = new LinkedHashMap<>();
        state.put("room", room.id());
        state.put("seat", seat.number());
        state.put("name", seat.name());
        state.put("extra", seat.extraTime());
        state.put("taken", seat.taken());
        state.put("handedIn", seat.handedIn());
        state.put("late", seat.late().name().toLowerCase(Locale.ROOT));
        state.put("later", seat.later().size());
        state.put("asked", asked);
        state.put("one", room.setup().oneByOne());
        state.put("title", room.current().title());
        state.put("written", seat.answers().stream().map(Answered::written).toList());
        // Nobody learns during the round whether an answer is right.
        state.put(
                "marks", ended ? seat.answers().stream().map(Answered::mark).toList() : List.of());
        return write(state).replaceFirst("}$", ",\"round\":" + live.round(room) + "}");
    }

    /// What the page script says, as JSON.
    public static String words(View view) {
        Map<String, String> words = new LinkedHashMap<>();
        SAID.forEach(key -> words.put(key, view.say("room.say." + key)));
        for (Refusal refusal : Refusal.values()) {
            words.put(
                    "refused-" + refusal.word(),
                    view.say("room.refused." + refusal.word() + ".what")
                            + " "
                            + view.say("room.refused." + refusal.word() + ".mend"));
        }
        return write(words);
    }

    /// JSON that can stand inside a script element.
    private static String write(Map<String, ?> values) {
        try {
            return JSON.writeValueAsString(values)
                    .replace("<", "\\u003c")
                    .replace(">", "\\u003e")
                    .replace("&", "\\u0026");
        } catch (JsonProcessingException bug) {
            throw new IllegalStateException("Cannot write " + values + ".", bug);
        }
    }
}
