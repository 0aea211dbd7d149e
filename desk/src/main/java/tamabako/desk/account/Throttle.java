package tamabako.desk.account;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Lets so many tries happen in a span of time and no more, each key by itself.
///
/// What it knows lies in memory: it is forgotten when the program stops, and each copy of the
/// program counts for itself.
final class Throttle {

    /// So many tries in a span.
    record Rate(int tries, Duration span) {}

    /// Keys beyond so many push the longest untouched out, so that a flood of them takes no memory.
    private static final int MOST_KEYS = 10_000;

    private final InstantSource clock;
    private final List<Rate> rates;
    private final Map<String, Deque<Instant>> tries =
            new LinkedHashMap<>(16, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Deque<Instant>> eldest) {
                    return size() > MOST_KEYS;
                }
            };

    /// @param clock tells when a try happens
    /// @param rates all of which must be kept, the shortest span first
    Throttle(InstantSource clock, List<Rate> rates) {
        this.clock = clock;
        this.rates = List.copyOf(rates);
    }

    /// Counts a try for `key`, unless there were too many: then how long to wait for the next. A
    /// try that is refused does not count.
    synchronized Optional<Duration> count(String key) {
        Instant now = clock.instant();
        Deque<Instant> past = tries.computeIfAbsent(key, _ -> new ArrayDeque<>());
        Instant forgotten = now.minus(rates.getLast().span());
        while (!past.isEmpty() && !past.getFirst().isAfter(forgotten)) {
            past.removeFirst();
        }
        Duration wait = Duration.ZERO;
        for (Rate rate : rates) {
            wait = longer(wait, wait(past, rate, now));
        }
        if (wait.isPositive()) {
            return Optional.of(wait);
        }
        past.addLast(now);
        return Optional.empty();
    }

    /// Takes the last try for `key` back, because it was right.
    synchronized void forgive(String key) {
        Deque<Instant> past = tries.get(key);
        if (past != null) {
            past.pollLast();
        }
    }

    private static Duration wait(Deque<Instant> past, Rate rate, Instant now) {
        Instant from = now.minus(rate.span());
        List<Instant> counted = past.stream().filter(one -> one.isAfter(from)).toList();
        return counted.size() < rate.tries()
                ? Duration.ZERO
                : Duration.between(from, counted.get(counted.size() - rate.tries()));
    }

    private static Duration longer(Duration one, Duration other) {
        return one.compareTo(other) < 0 ? other : one;
    }
}
