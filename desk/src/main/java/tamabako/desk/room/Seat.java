package tamabako.desk.room;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/// A pupil's place in a room.
///
/// @param number from 1
/// @param name as the class sees it
/// @param pupil the identity in the class book; blank for an alias
/// @param keys whose tablet it is
/// @param extraTime how much longer than the others, per cent
/// @param removed whether the teacher took the seat away
/// @param taken the number of the last message that was taken from it
/// @param answers to the round that goes on, in its order
/// @param turned how long the round was worked when the last answer came, in milliseconds
/// @param handedIn whether the round was handed in
/// @param late whether answers that come late are waiting, or may come
public record Seat(
        int number,
        String name,
        String pupil,
        Keys keys,
        int extraTime,
        boolean removed,
        int taken,
        List<Answered> answers,
        long turned,
        boolean handedIn,
        Late late) {

    public Seat {
        answers = List.copyOf(answers);
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

    /// What becomes of answers that come after the end.
    public enum Late {
        /// They are refused; none came.
        NONE,
        /// Some came and were refused; the teacher may let them in.
        WAITING,
        /// They may come.
        ADMITTED
    }

    /// A seat that was just taken.
    static Seat fresh(RoomEvent.Joined joined, int answers) {
        return new Seat(
                joined.seat(),
                joined.name(),
                joined.pupil(),
                new Keys(joined.key()),
                joined.extraTime(),
                false,
                0,
                Collections.nCopies(answers, Answered.NOTHING),
                0,
                false,
                Late.NONE);
    }

    /// How many answers are written.
    public long written() {
        return answers.stream().filter(Answered::isThere).count();
    }

    /// How many answers are right.
    public long right() {
        return answers.stream().filter(Answered::isRight).count();
    }

    Seat named(String other) {
        return new Seat(
                number, other, pupil, keys, extraTime, removed, taken, answers, turned, handedIn,
                late);
    }

    Seat with(Keys other) {
        return new Seat(
                number, name, pupil, other, extraTime, removed, taken, answers, turned, handedIn,
                late);
    }

    Seat withExtraTime(int percent) {
        return new Seat(
                number, name, pupil, keys, percent, removed, taken, answers, turned, handedIn,
                late);
    }

    Seat with(Late other) {
        return new Seat(
                number, name, pupil, keys, extraTime, removed, taken, answers, turned, handedIn,
                other);
    }

    Seat gone() {
        return new Seat(
                number, name, pupil, keys, extraTime, true, taken, answers, turned, handedIn, late);
    }

    Seat with(RoomEvent.Answered answered) {
        List<Answered> now = new ArrayList<>(answers);
        now.set(answered.problem(), answered.answer());
        return new Seat(
                number,
                name,
                pupil,
                keys,
                extraTime,
                removed,
                answered.number(),
                now,
                answered.worked(),
                handedIn,
                late);
    }

    Seat done(int message) {
        return new Seat(
                number, name, pupil, keys, extraTime, removed, message, answers, turned, true,
                late);
    }

    /// The same seat before a round with so many answers.
    Seat before(int answers) {
        return new Seat(
                number,
                name,
                pupil,
                keys,
                extraTime,
                removed,
                taken,
                Collections.nCopies(answers, Answered.NOTHING),
                0,
                false,
                Late.NONE);
    }
}
