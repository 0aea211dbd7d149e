package tamabako.desk.room.page;

import java.util.List;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Calling;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;
import tamabako.desk.room.Way;
import tamabako.problems.Column;
import tamabako.voice.script.CallLine;
import tamabako.voice.script.CallWords;
import tamabako.voice.script.Called;
import tamabako.voice.script.Caller;

/// What was said of the call that is on, for a pupil who reads it on the own tablet.
///
/// @param language the tag of the caller's language
/// @param rows those that were said, as the caller's words write them
record Captions(String language, List<String> rows) {

    private static final Captions NONE = new Captions("", List.of());

    Captions {
        rows = List.copyOf(rows);
    }

    /// Nothing where the teacher gave the seat no captions, and no row before it was said.
    static Captions of(RoomState room, Seat seat) {
        boolean isOn = seat.way() == Way.CAPTIONS && room.turn().problem() >= 0;
        return isOn
                        && room.current().activity()
                                instanceof Activity.Called(var columns, var calling)
                ? of(columns.get(room.turn().problem()), calling, room.said())
                : NONE;
    }

    private static Captions of(Column column, Calling calling, int said) {
        CallWords words = CallWords.find(calling.language()).orElseThrow();
        return Caller.call(column, words, calling.wish()) instanceof Called.Written(var script)
                ? new Captions(
                        calling.language().toLanguageTag(),
                        script.rows().stream().limit(said).map(CallLine::shown).toList())
                : NONE;
    }
}
