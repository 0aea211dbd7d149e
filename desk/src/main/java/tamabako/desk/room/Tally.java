package tamabako.desk.room;

import java.util.ArrayList;
import java.util.List;

/// How many are left after each problem of a round in which whoever is wrong drops out.
///
/// @param began how many took part
/// @param left how many were right in every problem so far, problem by problem; only those whose
///   answer was told
public record Tally(long began, List<Long> left) {

    public Tally {
        left = List.copyOf(left);
    }

    /// The tally of the round that goes on.
    public static Tally of(RoomState room) {
        List<Seat> standing = new ArrayList<>(room.seats().present().toList());
        long began = standing.size();
        List<Long> left = new ArrayList<>();
        for (int problem = 0; problem < told(room); problem++) {
            int at = problem;
            standing.removeIf(seat -> !seat.answers().get(at).isRight());
            left.add((long) standing.size());
        }
        return new Tally(began, left);
    }

    /// Whether a seat was right in every problem whose answer was told.
    public static boolean isStanding(RoomState room, Seat seat) {
        return seat.answers().stream().limit(told(room)).allMatch(Answered::isRight);
    }

    /// How many seats were right in a problem.
    public static long right(RoomState room, int problem) {
        return room.seats()
                .present()
                .filter(seat -> seat.answers().get(problem).isRight())
                .count();
    }

    /// How many problems have had their answer told.
    public static int told(RoomState room) {
        Turn turn = room.turn();
        boolean isAll = room.phase() instanceof Phase.Ended;
        return isAll || turn.step() == Turn.Step.REVEALED ? turn.problem() + 1 : turn.problem();
    }
}
