package tamabako.desk.room.page;

import java.util.Locale;
import java.util.function.Predicate;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Answered;
import tamabako.desk.room.Phase;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Tally;
import tamabako.desk.room.Turn;
import tamabako.problems.marking.Written;

/// The problem that is on, in a round whose problems come one after another.
///
/// @param number of the problem, from 1; 0 before the first
/// @param of how many there are
/// @param activity the word of what is done
/// @param onBoard whether the projector shows the numbers
/// @param run which run of a round it is
/// @param step the word of how far it is; `before` before the first
/// @param times how often it was begun
/// @param answer written out, where it was told; else blank
/// @param answered how many seats wrote something
/// @param spoiled how many tablets did not show it as it was to be
/// @param right how many are right, where the answer was told
/// @param standing how many are still in, where whoever is wrong drops out; else -1
/// @param hands how many raised hands of this problem were counted, or how many take part without a
///   tablet before the first; -1 where nobody counted
public record TurnView(
        int number,
        int of,
        String activity,
        boolean onBoard,
        int run,
        String step,
        int times,
        String answer,
        long answered,
        long spoiled,
        long right,
        long standing,
        int hands) {

    static TurnView of(RoomState room, Locale language) {
        Activity activity = room.current().activity();
        Turn turn = room.turn();
        int at = turn.problem();
        boolean isContest = activity.contest() != tamabako.desk.room.Contest.NONE;
        return new TurnView(
                at + 1,
                activity.answers(),
                activity.word(),
                activity instanceof Activity.Shown shown && shown.screen() == Activity.Screen.BOARD,
                room.run(),
                at < 0 ? "before" : step(room).word(),
                turn.times(),
                answer(room, language),
                at < 0 ? 0 : count(room, at, Answered::isThere),
                at < 0 ? 0 : count(room, at, Answered::isVoid),
                at < 0 ? 0 : Tally.right(room, at),
                isContest ? Tally.standing(room).count() : -1,
                room.hands().at(at).orElse(-1));
    }

    /// A round that is over tells its last answer too.
    private static Turn.Step step(RoomState room) {
        return room.phase() instanceof Phase.Ended ? Turn.Step.REVEALED : room.turn().step();
    }

    /// The answer to the problem that is on, where it was told; else blank.
    static String answer(RoomState room, Locale language) {
        int at = room.turn().problem();
        return at < 0 || step(room) != Turn.Step.REVEALED
                ? ""
                : Written.of(room.current().problems().get(at)).in(language);
    }

    private static long count(RoomState room, int problem, Predicate<Answered> which) {
        return room.seats()
                .present()
                .map(seat -> seat.answers().get(problem))
                .filter(which)
                .count();
    }

    /// What is said about the step: the words after `turn.step.` for the class, after `turn.lead.`
    /// for the teacher.
    public String said() {
        return isOn() && !step.equals("under-way")
                ? step
                : activity + (onBoard ? ".board." : ".") + step;
    }

    /// Whether the answer was told.
    public boolean isTold() {
        return step.equals("revealed");
    }

    /// Whether a problem is on.
    public boolean isOn() {
        return number > 0;
    }

    /// Whether another problem follows.
    public boolean hasNext() {
        return number < of;
    }
}
