package tamabako.desk.room.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Phase;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Way;
import tamabako.desk.showing.Look;
import tamabako.desk.showing.Pace;
import tamabako.desk.showing.Seats;
import tamabako.desk.web.Reply;
import tamabako.problems.Column;
import tamabako.records.ClassBook;
import tamabako.voice.sound.Sounding;
import tamabako.voice.sound.Wave;

/// The numbers that are shown, for whichever screen shows them; nobody gets them before the teacher
/// begins.
final class ShownPages {

    private static final JsonMapper JSON = new JsonMapper();

    private static final Optional<Seats> NO_SEATS = Optional.empty();

    private final ClassBook book;

    ShownPages(ClassBook book) {
        this.book = book;
    }

    /// For the projector, with the screen and the nearest seat.
    Reply forBoard(RoomState room) {
        Optional<Activity.Shown> shown =
                begun(room).filter(one -> one.screen() == Activity.Screen.BOARD);
        return shown.map(
                        one -> Reply.json(json(room, one, one.pace(), Seats.kept(book.settings()))))
                .orElseGet(() -> Reply.trouble(404, "nowhere"));
    }

    /// For the tablet of a seat; empty where it shows nothing, or not yet.
    Optional<Reply> forSeat(RoomState room, Seat seat, Locale language) {
        return begun(room)
                .filter(_ -> shows(room, seat))
                .map(shown ->
                        Reply.json(
                                voice(room, seat, language).isPresent()
                                        ? spoken(room)
                                        : json(room, shown, pace(room, seat, shown), NO_SEATS)));
    }

    /// The numbers as a voice says them, for a seat that hears them; empty where it does not, or
    /// not yet.
    Optional<Reply> sound(RoomState room, Seat seat, Locale language) {
        return voice(room, seat, language)
                .map(sounding ->
                        new Reply.Bytes(
                                200, "audio/wav", Map.of(), Wave.of(sounding.sound().samples())));
    }

    private static Optional<Sounding> voice(RoomState room, Seat seat, Locale language) {
        return begun(room)
                .filter(_ -> seat.way() == Way.SPOKEN)
                .flatMap(shown ->
                        Spoken.of(
                                shown.columns().get(room.turn().problem()),
                                shown.pace().period(),
                                language));
    }

    private static Pace pace(RoomState room, Seat seat, Activity.Shown shown) {
        boolean isCalm = isCalm(room, seat) || seat.way() == Way.SPOKEN;
        return isCalm ? shown.pace().calm() : shown.pace();
    }

    /// Whether the numbers come on the seat's own tablet: where they come on all tablets, and where
    /// the pupil is to see them slowly or to hear them.
    static boolean shows(RoomState room, Seat seat) {
        return room.current().activity() instanceof Activity.Shown shown
                && (shown.screen() == Activity.Screen.TABLETS
                        || isCalm(room, seat)
                        || isSpoken(room, seat));
    }

    /// Whether the pupil is to hear them.
    static boolean isSpoken(RoomState room, Seat seat) {
        return room.current().activity() instanceof Activity.Shown && seat.way() == Way.SPOKEN;
    }

    private static boolean isCalm(RoomState room, Seat seat) {
        return room.setup().findPupil(seat.pupil()).filter(Expected::calm).isPresent();
    }

    private static Optional<Activity.Shown> begun(RoomState room) {
        boolean isOn = room.turn().problem() >= 0 && room.phase() instanceof Phase.Running;
        return isOn && room.current().activity() instanceof Activity.Shown shown
                ? Optional.of(shown)
                : Optional.empty();
    }

    private static String spoken(RoomState room) {
        return write(
                Map.of(
                        "problem",
                        room.turn().problem(),
                        "times",
                        room.turn().times(),
                        "spoken",
                        true));
    }

    private static String json(
            RoomState room, Activity.Shown shown, Pace pace, Optional<Seats> seats) {
        Column column = shown.columns().get(room.turn().problem());
        return write(
                Map.of(
                        "problem",
                        room.turn().problem(),
                        "times",
                        room.turn().times(),
                        "texts",
                        column.rows().stream().map(BigDecimal::toPlainString).toList(),
                        "period",
                        pace.period(),
                        "shown",
                        pace.shown(),
                        "anySize",
                        shown.anySize(),
                        "beads",
                        shown.look() == Look.FRAME,
                        "screenWidth",
                        seats.map(Seats::screenWidth).orElse(0),
                        "nearest",
                        seats.map(Seats::nearest).orElse(0)));
    }

    private static String write(Map<String, ?> values) {
        try {
            return JSON.writeValueAsString(values);
        } catch (JsonProcessingException bug) {
            throw new IllegalStateException("Cannot write " + values + ".", bug);
        }
    }
}
