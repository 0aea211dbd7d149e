package tamabako.desk.room;

/// Where a round stands. Moments are milliseconds of the epoch, by the desk's clock.
public sealed interface Phase {

    /// Not begun; nobody sees the problems yet.
    record Waiting() implements Phase {}

    /// Going on.
    ///
    /// @param since when it began or went on
    /// @param worked what was worked before that, in milliseconds
    record Running(long since, long worked) implements Phase {}

    /// Stopped for a while.
    record Paused(long worked) implements Phase {}

    /// Over.
    record Ended(long at, long worked) implements Phase {}

    /// How long the round was worked at `now`, in milliseconds; pauses do not count.
    default long worked(long now) {
        return switch (this) {
            case Waiting _ -> 0;
            case Running(long since, long worked) -> worked + Math.max(0, now - since);
            case Paused(long worked) -> worked;
            case Ended(_, long worked) -> worked;
        };
    }

    /// The word for it in pages and streams.
    default String word() {
        return switch (this) {
            case Waiting _ -> "waiting";
            case Running _ -> "running";
            case Paused _ -> "paused";
            case Ended _ -> "ended";
        };
    }
}
