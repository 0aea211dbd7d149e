package tamabako.desk.room;

/// What somebody wishes to happen in a room. Moments are milliseconds of the epoch, by the desk's
/// clock, keys are digests.
public sealed interface RoomCommand {

    /// Something that the teacher wishes.
    sealed interface OfTeacher extends RoomCommand {}

    /// Something that a pupil wishes, who shows the key of a tablet.
    sealed interface OfPupil extends RoomCommand {
        /// The seat in question.
        int seat();

        /// The key that the tablet showed.
        String key();
    }

    /// Sit down under a name. Who may call themselves so was looked at before.
    record Join(String name, String pupil, String key, int extraTime) implements RoomCommand {}

    /// Go on with a seat that another tablet works at.
    record AskTakeOver(int seat, String key) implements RoomCommand {}

    /// The limits of a round passed.
    record TimeUp(long at) implements RoomCommand {}

    /// Let go of a room that is closed, if nothing waits there any more.
    record ClearAway(long at) implements RoomCommand {}

    /// Let go of everything that tells of a pupil.
    record Forget(String pupil) implements RoomCommand {}

    /// Begin the round, or go on after a pause.
    record Start(long at) implements OfTeacher {}

    /// Stop the round for a while.
    record Pause(long at) implements OfTeacher {}

    /// The round takes so many seconds longer.
    record AddTime(int seconds) implements OfTeacher {}

    /// End the round.
    record End(long at) implements OfTeacher {}

    /// On to the next round.
    record Next(long at) implements OfTeacher {}

    /// The same round once more.
    record Repeat(long at) implements OfTeacher {}

    /// Let nobody join any more, or again.
    record Lock(boolean on) implements OfTeacher {}

    /// Show right and wrong on the projector, or not.
    record ShowMarks(boolean on) implements OfTeacher {}

    /// Let the room be joined by that code from now on.
    record NewCode(String code) implements OfTeacher {}

    /// Take a seat away.
    record Remove(int seat) implements OfTeacher {}

    /// Give a seat another name.
    record Rename(int seat, String name) implements OfTeacher {}

    /// Give a seat so much more time than the others, per cent.
    record GiveExtraTime(int seat, int percent) implements OfTeacher {}

    /// Let the numbers of a call or a showing reach a seat in another way.
    record GiveWay(int seat, Way way) implements OfTeacher {}

    /// So many rows of a problem were said.
    ///
    /// @param problem from 0
    record SayRow(int problem, int rows) implements OfTeacher {}

    /// So many hands of pupils without a tablet were raised at a problem.
    ///
    /// @param problem from 0, or [Hands#BEGAN]
    record CountHands(int problem, int hands) implements OfTeacher {}

    /// Let a seat move to the tablet that asks, or not.
    record LetMove(int seat, boolean yes) implements OfTeacher {}

    /// Let in the answers of a seat that came when they could not count any more.
    record AdmitLate(int seat) implements OfTeacher {}

    /// Leave out what came later from a seat.
    record LeaveOut(int seat) implements OfTeacher {}

    /// Move on in a round whose problems come one after another.
    ///
    /// @param problem which one is meant, from 0
    record TakeTurn(Turn.Move move, int problem, long at) implements OfTeacher {}

    /// Close the room. Answers that wait for the teacher go on waiting.
    record Close(long at) implements OfTeacher {}

    /// The pupil at the old tablet lets the seat move, or not.
    record AgreeToMove(int seat, String key, boolean yes) implements OfPupil {}

    /// An answer.
    ///
    /// @param run which run of a round the page shows
    /// @param number the seat's count of its messages, from 1 without gaps
    /// @param problem from 0
    /// @param fresh whether it was sent as soon as it was written
    record Answer(
            int seat,
            String key,
            int run,
            int number,
            int problem,
            String written,
            boolean fresh,
            long at)
            implements OfPupil {}

    /// The round is handed in.
    record HandIn(int seat, String key, int run, int number, long at) implements OfPupil {}

    /// The tablet showed a problem.
    ///
    /// @param problem from 0
    /// @param exact whether every number was shown when and as long as it was to be
    record Report(int seat, String key, int run, int problem, boolean exact) implements OfPupil {}
}
