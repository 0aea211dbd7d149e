package tamabako.desk.room;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/// A pupil's place in a room.
///
/// @param number from 1
/// @param name as the class sees it
/// @param pupil the identity in the class book; blank for an alias
/// @param keys whose tablet it is
/// @param aid what makes it easier for the pupil to take part
/// @param removed whether the teacher took the seat away
/// @param taken the number of the last message that was taken from it
/// @param doing what it did in the round that goes on
/// @param later what came when it could not count any more, and waits for the teacher
public record Seat(
        int number,
        String name,
        String pupil,
        Keys keys,
        Aid aid,
        boolean removed,
        int taken,
        Doing doing,
        List<Later> later) {

    public Seat {
        later = List.copyOf(later);
    }

    /// The keys of a seat's tablets, as their digests.
    ///
    /// @param key the tablet that works
    /// @param former the one that it worked on before; blank for none
    /// @param asking the one that would like to go on; blank for none
    public record Keys(String key, String former, String asking) {

        /// Just the one tablet.
        public Keys(String key) {
            this(key, "", "");
        }
    }

    /// What makes it easier for a pupil to take part.
    ///
    /// @param extraTime how much longer than the others, per cent
    /// @param way how the numbers of a call or a showing reach the pupil
    public record Aid(int extraTime, Way way) {}

    /// What a seat did in one run of a round.
    ///
    /// @param answers in the order of the problems
    /// @param turned how long the round was worked when the last answer came, in milliseconds
    /// @param handedIn whether the round was handed in
    public record Doing(List<Answered> answers, long turned, boolean handedIn) {

        public Doing {
            answers = List.copyOf(answers);
        }

        /// Nothing yet, of so many answers.
        static Doing nothing(int answers) {
            return new Doing(Collections.nCopies(answers, Answered.NOTHING), 0, false);
        }

        Doing with(int problem, Answered answer, long when) {
            List<Answered> now = new ArrayList<>(answers);
            now.set(problem, answer);
            return new Doing(now, when, handedIn);
        }

        Doing done() {
            return new Doing(answers, turned, true);
        }
    }

    /// A seat that was just taken.
    static Seat fresh(RoomEvent.Joined joined, int answers) {
        return new Seat(
                joined.seat(),
                joined.name(),
                joined.pupil(),
                new Keys(joined.key()),
                new Aid(joined.extraTime(), Way.CLASS),
                false,
                0,
                Doing.nothing(answers),
                List.of());
    }

    /// The answers to the round that goes on, in its order.
    public List<Answered> answers() {
        return doing.answers();
    }

    /// How much longer than the others, per cent.
    public int extraTime() {
        return aid.extraTime();
    }

    /// How the numbers of a call or a showing reach the pupil.
    public Way way() {
        return aid.way();
    }

    /// How long the round was worked when the last answer came, in milliseconds.
    public long turned() {
        return doing.turned();
    }

    /// Whether the round was handed in.
    public boolean handedIn() {
        return doing.handedIn();
    }

    /// How many answers are written.
    public long written() {
        return answers().stream().filter(Answered::isThere).count();
    }

    /// How many answers are right.
    public long right() {
        return answers().stream().filter(Answered::isRight).count();
    }

    Seat named(String other) {
        return new Seat(number, other, pupil, keys, aid, removed, taken, doing, later);
    }

    Seat with(Keys other) {
        return new Seat(number, name, pupil, other, aid, removed, taken, doing, later);
    }

    Seat with(Aid other) {
        return new Seat(number, name, pupil, keys, other, removed, taken, doing, later);
    }

    Seat gone() {
        return new Seat(number, name, pupil, keys, aid, true, taken, doing, later);
    }

    /// The same seat, whose last message had that number.
    Seat passed(int message) {
        return new Seat(number, name, pupil, keys, aid, removed, message, doing, later);
    }

    Seat with(List<Later> others) {
        return new Seat(number, name, pupil, keys, aid, removed, taken, doing, others);
    }

    private Seat doing(UnaryOperator<Doing> change) {
        return new Seat(number, name, pupil, keys, aid, removed, taken, change.apply(doing), later);
    }

    Seat with(RoomEvent.Answered answered) {
        return passed(answered.number())
                .doing(now -> now.with(answered.problem(), answered.answer(), answered.worked()));
    }

    Seat done(int message) {
        return passed(message).doing(Doing::done);
    }

    Seat ran(int problem, boolean exact) {
        return doing(
                now -> now.with(problem, exact ? Answered.NOTHING : Answered.VOID, now.turned()));
    }

    /// The same seat with one more answer that came later, or another one in its place.
    Seat with(int message, Later came) {
        return passed(message).with(Stream.concat(others(came), Stream.of(came)).toList());
    }

    /// The same seat after an answer was let in.
    ///
    /// @param isNow whether it answers the round that goes on
    Seat without(Later letIn, boolean isNow) {
        Seat rest = with(others(letIn).toList());
        return isNow
                ? rest.doing(now -> now.with(letIn.problem(), letIn.answer(), now.turned()))
                : rest;
    }

    private Stream<Later> others(Later one) {
        return later.stream().filter(other -> !other.answersTheSameAs(one));
    }

    /// The same seat before a round with so many answers.
    Seat before(int answers) {
        return doing(_ -> Doing.nothing(answers));
    }

    /// A seat of which nothing is known any more.
    Seat forgotten() {
        return new Seat(
                number,
                "",
                "",
                new Keys(""),
                new Aid(0, Way.CLASS),
                true,
                taken,
                Doing.nothing(answers().size()),
                List.of());
    }
}
