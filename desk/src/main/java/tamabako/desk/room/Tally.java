package tamabako.desk.room;

import java.util.ArrayList;
import java.util.List;

/// How many are left after each problem of a round in which whoever is wrong drops out, on tablets
/// and by raised hands.
///
/// @param began how many took part
/// @param left how many were right in every problem so far, problem by problem; only those whose
///   answer was told
public record Tally(long began, List<Long> left) {

    public Tally {
        left = List.copyOf(left);
    }

    /// Who is still in.
    ///
    /// @param seats at tablets
    /// @param hands without a tablet
    public record Standing(List<Seat> seats, int hands) {

        public Standing {
            seats = List.copyOf(seats);
        }

        /// How many they are together.
        public long count() {
            return seats.size() + (long) hands;
        }
    }

    /// The tally of the round that goes on.
    public static Tally of(RoomState room) {
        List<Long> left = new ArrayList<>();
        Standing began = began(room);
        walk(room, began, left);
        return new Tally(began.count(), left);
    }

    /// Who is still in: right in every problem whose answer was told. Where all were wrong in one,
    /// those who were in before it play on. Hands that nobody counted at a problem stay up.
    public static Standing standing(RoomState room) {
        return walk(room, began(room), new ArrayList<>());
    }

    private static Standing began(RoomState room) {
        return new Standing(
                room.seats().present().toList(), room.hands().at(Hands.BEGAN).orElse(0));
    }

    private static Standing walk(RoomState room, Standing began, List<Long> left) {
        Standing standing = began;
        for (int problem = 0; problem < told(room); problem++) {
            int at = problem;
            Standing right =
                    new Standing(
                            standing.seats().stream()
                                    .filter(seat -> seat.answers().get(at).isRight())
                                    .toList(),
                            room.hands().at(problem).orElse(standing.hands()));
            left.add(right.count());
            standing = right.count() == 0 ? standing : right;
        }
        return standing;
    }

    /// How many were right in a problem.
    public static long right(RoomState room, int problem) {
        long seats =
                room.seats()
                        .present()
                        .filter(seat -> seat.answers().get(problem).isRight())
                        .count();
        return seats + room.hands().at(problem).orElse(0);
    }

    /// How many problems have had their answer told.
    public static int told(RoomState room) {
        Turn turn = room.turn();
        boolean isAll = room.phase() instanceof Phase.Ended;
        return isAll || turn.step() == Turn.Step.REVEALED ? turn.problem() + 1 : turn.problem();
    }
}
