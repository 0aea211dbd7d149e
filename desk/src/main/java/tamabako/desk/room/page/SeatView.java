package tamabako.desk.room.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Answered;
import tamabako.desk.room.Phase;
import tamabako.desk.room.Refusal;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Tally;
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

    /// What it says where problems come one after another, by the words after `turn.say.`.
    private static final List<String> TURNS =
            List.of(
                    "called.before",
                    "called.under-way",
                    "shown.before",
                    "shown.under-way",
                    "shown.here.before",
                    "shown.here.under-way",
                    "spoken.before",
                    "spoken.under-way",
                    "spoken.spoiled",
                    "shown.spoiled",
                    "unsafe",
                    "answering",
                    "sent",
                    "send",
                    "revealed",
                    "right",
                    "wrong",
                    "none");

    static SeatView of(RoomState room, Seat seat, Live live, Locale language) {
        boolean asked = !seat.keys().asking().isEmpty();
        return new SeatView(
                room.id(),
                room.setup().title(),
                seat.name(),
                seat.number(),
                room.code(),
                asked,
                state(room, seat, live, asked, language));
    }

    private static String state(
            RoomState room, Seat seat, Live live, boolean asked, Locale language) {
        Map<String, Object> state = new LinkedHashMap<>();
        state.put("room", room.id());
        state.put("seat", seat.number());
        state.put("name", seat.name());
        state.put("extra", seat.extraTime());
        state.put("taken", seat.taken());
        state.put("handedIn", seat.handedIn());
        state.put("later", seat.later().size());
        state.put("asked", asked);
        state.put("one", room.setup().oneByOne());
        state.put("title", room.current().title());
        state.put("written", seat.answers().stream().map(Answered::written).toList());
        state.put("marks", marks(room, seat));
        state.put("activity", room.current().activity().word());
        state.put("shows", ShownPages.shows(room, seat));
        state.put("spoken", ShownPages.isSpoken(room, seat));
        state.put("captions", Captions.of(room, seat));
        state.put(
                "everywhere",
                room.current().activity() instanceof Activity.Shown shown
                        && shown.screen() == Activity.Screen.TABLETS);
        state.put("answer", TurnView.answer(room, language));
        return write(state).replaceFirst("}$", ",\"round\":" + live.round(room) + "}");
    }

    /// Nobody learns whether an answer is right before the round is over, or before the answer was
    /// told where problems come one after another.
    private static List<String> marks(RoomState room, Seat seat) {
        int known =
                room.phase() instanceof Phase.Ended
                        ? seat.answers().size()
                        : room.current().activity().inTurn() ? Tally.told(room) : 0;
        return seat.answers().stream().limit(known).map(Answered::mark).toList();
    }

    /// What the page script says, as JSON.
    public static String words(View view) {
        Map<String, String> words = new LinkedHashMap<>();
        SAID.forEach(key -> words.put(key, view.say("room.say." + key)));
        TURNS.forEach(key -> words.put(key, view.say("turn.say." + key)));
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
