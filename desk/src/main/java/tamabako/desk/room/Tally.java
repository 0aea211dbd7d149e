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
        List<Long> left = new ArrayList<>();
        List<Seat> began = room.seats().present().toList();
        walk(room, began, left);
        return new Tally(began.size(), left);
    }

    /// Who is still in: right in every problem whose answer was told. Where all were wrong in one,
    /// those who were in before it play on.
    public static List<Seat> standing(RoomState room) {
        return walk(room, room.seats().present().toList(), new ArrayList<>());
    }

    private static List<Seat> walk(RoomState room, List<Seat> began, List<Long> left) {
        List<Seat> standing = began;
        for (int problem = 0; problem < told(room); problem++) {
            int at = problem;
            List<Seat> right =
                    standing.stream().filter(seat -> seat.answers().get(at).isRight()).toList();
            left.add((long) right.size());
            standing = right.isEmpty() ? standing : right;
        }
        return standing;
    }

    /// How many seats were right in a problem.
    public static long right(RoomState room, int problem) {
        return room.seats().present().filter(seat -> seat.answers().get(problem).isRight()).count();
    }

    /// How many problems have had their answer told.
    public static int told(RoomState room) {
        Turn turn = room.turn();
        boolean isAll = room.phase() instanceof Phase.Ended;
        return isAll || turn.step() == Turn.Step.REVEALED ? turn.problem() + 1 : turn.problem();
    }
}
