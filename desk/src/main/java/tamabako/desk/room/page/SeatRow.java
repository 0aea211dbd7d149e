package tamabako.desk.room.page;

import java.util.List;
import tamabako.desk.room.Answered;
import tamabako.desk.room.Seat;

/// A seat as the teacher sees it.
///
/// @param number of the seat
/// @param name the pupil's
/// @param state `working`, `away` or `done`
/// @param asks whether another tablet asks for the seat
/// @param later how many answers came when they could not count any more
/// @param extraTime per cent
/// @param way the word of how the numbers of a call or a showing reach the pupil
/// @param standing whether the pupil is still in, where whoever is wrong drops out
/// @param marks the word of the mark of each answer, `empty` where there is none
/// @param written how many answers are written
/// @param right how many are right
public record SeatRow(
        int number,
        String name,
        String state,
        boolean asks,
        int later,
        int extraTime,
        String way,
        boolean standing,
        List<String> marks,
        long written,
        long right) {

    public SeatRow {
        marks = List.copyOf(marks);
    }

    /// Whether the state tells anything in that phase of the round: that somebody works does so
    /// only while the round goes on.
    public boolean isWorthSaying(String phase) {
        return !state.equals("working") || phase.equals("running") || phase.equals("paused");
    }

    static SeatRow of(Seat seat, boolean away, boolean standing) {
        return new SeatRow(
                seat.number(),
                seat.name(),
                seat.handedIn() ? "done" : away ? "away" : "working",
                !seat.keys().asking().isEmpty(),
                seat.later().size(),
                seat.extraTime(),
                seat.way().word(),
                standing,
                seat.answers().stream().map(Answered::mark).toList(),
                seat.written(),
                seat.right());
    }
}
