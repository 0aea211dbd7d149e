package tamabako.desk.room.page;

import java.time.Duration;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;

/// Counts wrong tries, and says when somebody has to wait.
final class Guesses {

    /// So many who tried are remembered, the latest; a fresh one costs a guesser nothing but gains
    /// nothing either, since all together are counted too.
    private static final int REMEMBERED = 10_000;

    private final int most;
    private final long within;
    private final InstantSource clock;
    private final Map<String, Tries> wrong = new LinkedHashMap<>();

    private record Tries(long since, int count) {}

    /// @param most wrong tries are allowed, one after another
    /// @param within this long; then the count begins anew
    Guesses(int most, Duration within, InstantSource clock) {
        this.most = most;
        this.within = within.toMillis();
        this.clock = clock;
    }

    /// Whether that one has to wait.
    synchronized boolean isTooMany(String who) {
        Tries tries = wrong.get(who);
        return tries != null && tries.count() >= most && !isOver(tries);
    }

    private boolean isOver(Tries tries) {
        return clock.millis() - tries.since() >= within;
    }

    /// Counts a wrong try.
    synchronized void wrong(String who) {
        Tries before = wrong.remove(who);
        boolean anew = before == null || isOver(before);
        wrong.put(who, anew ? new Tries(clock.millis(), 1) : new Tries(before.since(), before.count() + 1));
        if (wrong.size() > REMEMBERED) {
            wrong.remove(wrong.keySet().iterator().next());
        }
    }
}
