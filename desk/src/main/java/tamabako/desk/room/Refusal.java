package tamabako.desk.room;

import java.util.Locale;

/// Why a wish is not granted. [#word] names the texts that tell it: `room.refused.WORD`.
public enum Refusal {
    /// The room is closed or gone.
    CLOSED,
    /// Nobody may join any more.
    LOCKED,
    /// Every seat is taken.
    FULL,
    /// A name that cannot be used: blank, too long, or with signs that nobody can see.
    BAD_NAME,
    /// Somebody sits there under that name.
    NAME_TAKEN,
    /// There is no such seat, or the key is not that of its tablet.
    NOT_YOURS,
    /// The teacher took the seat away.
    REMOVED,
    /// The seat went on to another tablet.
    MOVED,
    /// No tablet asks for the seat.
    NOBODY_ASKS,
    /// The page shows a round that is over and gone.
    STALE,
    /// The round did not begin yet.
    NOT_BEGUN,
    /// The last word or number of the problem is not out yet.
    EARLY,
    /// The problem was shown badly and does not count.
    NOT_COUNTED,
    /// The time was up before it came.
    LATE,
    /// The round was handed in already.
    HANDED_IN,
    /// A message before this one is missing.
    GAP,
    /// There is no such problem, or the answer is longer than any answer.
    NO_ANSWER,
    /// It cannot be done where the round stands now.
    NOT_NOW,
    /// The round has no limit.
    NO_LIMIT,
    /// There is no round after this one.
    LAST_ROUND,
    /// The figure is out of its range.
    OUT_OF_RANGE;

    /// The word for it in texts and messages, such as `name-taken`.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
