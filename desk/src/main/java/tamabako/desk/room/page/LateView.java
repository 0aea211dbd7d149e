package tamabako.desk.room.page;

import java.util.List;
import tamabako.desk.room.Later;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Seat;

/// The answers of a room that came when they could not count any more.
///
/// @param room its identity
/// @param title what the class saw
/// @param closed whether the room is closed
/// @param seats those with such answers
public record LateView(String room, String title, boolean closed, List<LateSeat> seats) {

    public LateView {
        seats = List.copyOf(seats);
    }

    /// A seat with its late answers.
    public record LateSeat(int number, String name, List<LateAnswer> answers) {

        public LateSeat {
            answers = List.copyOf(answers);
        }
    }

    /// One late answer.
    ///
    /// @param round the title of its round
    /// @param problem the number of the problem on the sheet
    /// @param written as the pupil wrote it
    /// @param right whether it would count
    public record LateAnswer(String round, String problem, String written, boolean right) {}

    static LateView of(RoomState room) {
        List<LateSeat> seats =
                room.seats()
                        .present()
                        .filter(seat -> !seat.later().isEmpty())
                        .map(seat -> of(room, seat))
                        .toList();
        return new LateView(room.id(), room.setup().title(), room.closed(), seats);
    }

    private static LateSeat of(RoomState room, Seat seat) {
        return new LateSeat(
                seat.number(),
                seat.name(),
                seat.later().stream().map(later -> of(room, later)).toList());
    }

    private static LateAnswer of(RoomState room, Later later) {
        return new LateAnswer(
                room.roundOf(later.run()).title(),
                room.roundOf(later.run()).problems().get(later.problem()).id(),
                later.written(),
                later.answer().isRight());
    }
}
