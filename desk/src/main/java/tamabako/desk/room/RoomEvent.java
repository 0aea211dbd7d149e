package tamabako.desk.room;

import java.util.List;
import java.util.OptionalLong;

/// Something that happened in a room. Events are kept for as long as the room is open; moments are
/// milliseconds of the epoch, keys are digests.
public sealed interface RoomEvent {

    /// Something that happened at one seat.
    sealed interface OfSeat extends RoomEvent {
        /// The number of the seat.
        int seat();
    }

    /// The room is found by another code from now on.
    record CodeChanged(String code) implements RoomEvent {}

    /// Nobody may join any more, or may again.
    record Locked(boolean on) implements RoomEvent {}

    /// The projector shows right and wrong, or hides them.
    record MarksShown(boolean on) implements RoomEvent {}

    /// Somebody sat down.
    record Joined(int seat, String name, String pupil, String key, int extraTime)
            implements OfSeat {}

    /// The teacher took a seat away.
    record Removed(int seat) implements OfSeat {}

    /// The teacher gave a seat another name.
    record Renamed(int seat, String name) implements OfSeat {}

    /// A seat may take longer, per cent.
    record ExtraTimeGiven(int seat, int percent) implements OfSeat {}

    /// The numbers of a call or a showing reach a seat in another way.
    record WayGiven(int seat, Way way) implements OfSeat {}

    /// Another tablet would like to go on with a seat; a blank key takes the wish back.
    record TakeOverAsked(int seat, String key) implements OfSeat {}

    /// The tablet that asked goes on with the seat.
    record TakenOver(int seat) implements OfSeat {}

    /// The round began, or went on after a pause.
    record Started(long at) implements RoomEvent {}

    /// The round stopped for a while.
    record Paused(long at) implements RoomEvent {}

    /// The round takes longer, in milliseconds.
    record TimeAdded(long more) implements RoomEvent {}

    /// The round is over.
    record Ended(long at) implements RoomEvent {}

    /// A round is about to begin: the next one, or the same again.
    ///
    /// @param round which of the setup, from 0
    record RoundSet(int round) implements RoomEvent {}

    /// An answer was taken and marked.
    ///
    /// @param number of the message, counted by the seat
    /// @param problem from 0
    /// @param mark its word
    /// @param took in milliseconds; -1 where nobody knows
    /// @param worked how long the round was worked then, in milliseconds
    record Answered(
            int seat, int number, int problem, String written, String mark, long took, long worked)
            implements OfSeat {

        tamabako.desk.room.Answered answer() {
            return new tamabako.desk.room.Answered(
                    written, mark, took < 0 ? OptionalLong.empty() : OptionalLong.of(took));
        }
    }

    /// A seat handed the round in.
    record HandedIn(int seat, int number) implements OfSeat {}

    /// Another problem is on, or the one that is on is further.
    record Turned(Turn turn) implements RoomEvent {}

    /// So many rows of the problem that is on were said.
    record RowSaid(int rows) implements RoomEvent {}

    /// The teacher counted raised hands at a problem; see [Hands].
    record HandsRaised(int problem, int hands) implements RoomEvent {}

    /// A tablet showed a problem, exactly or badly.
    record Ran(int seat, int problem, boolean exact) implements OfSeat {}

    /// An answer came when it could not count any more; the teacher may let it in.
    ///
    /// @param number of the message, counted by the seat
    record CameLater(int seat, int number, Later later) implements OfSeat {}

    /// A message came that has nothing to say any more.
    record Passed(int seat, int number) implements OfSeat {}

    /// The teacher let in an answer that came later.
    record LetIn(int seat, Later later) implements OfSeat {}

    /// The teacher leaves out what came later from a seat.
    record LeftOut(int seat) implements OfSeat {}

    /// A pupil was erased from the class book: everything that tells of the pupil is gone here too.
    ///
    /// @param place among those who were expected, from 0; -1 for none of them
    /// @param seats where the pupil sat
    record Forgotten(int place, List<Integer> seats) implements RoomEvent {
        public Forgotten {
            seats = List.copyOf(seats);
        }
    }

    /// Nobody works here any more. What is still on a tablet may come, and waits for the teacher.
    record Closed(long at) implements RoomEvent {}

    /// The room is gone, with all that happened in it.
    record Cleared() implements RoomEvent {}
}
