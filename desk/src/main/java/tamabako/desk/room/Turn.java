package tamabako.desk.room;

import java.util.Locale;

/// Which problem is on in a round whose problems come one after another, and how far it is.
///
/// @param problem from 0; -1 before the first
/// @param times how often it was begun
/// @param step how far it is
/// @param at when it came there, in milliseconds of the epoch
public record Turn(int problem, int times, Step step, long at) {

    /// Before the first problem.
    public static final Turn NONE = new Turn(-1, 0, Step.REVEALED, 0);

    /// How far a problem is.
    public enum Step {
        /// It is being called or shown.
        UNDER_WAY,
        /// Its last word or number is out: answers are taken.
        ANSWERING,
        /// It was shown badly and does not count until it is shown again.
        SPOILED,
        /// Its answer was told: it takes no more.
        REVEALED;

        /// The word for it in pages and streams.
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /// What moves it on.
    public enum Move {
        /// Begin a problem, or the same again.
        BEGIN,
        /// The last word or number is out.
        OPEN,
        /// It was shown badly.
        SPOIL,
        /// Tell the answer.
        REVEAL
    }

    /// The same problem from its beginning. One whose answer is known stays known.
    Turn again(long now) {
        return step == Step.REVEALED
                ? new Turn(problem, times + 1, step, at)
                : new Turn(problem, times + 1, Step.UNDER_WAY, now);
    }

    Turn with(Step changed, long now) {
        return new Turn(problem, times, changed, now);
    }
}
