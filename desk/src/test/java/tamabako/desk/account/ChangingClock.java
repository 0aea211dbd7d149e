package tamabako.desk.account;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/// A clock that goes on when it is told to.
final class ChangingClock implements InstantSource {

    private Instant now = Instant.parse("2026-04-14T07:05:00Z");

    @Override
    public Instant instant() {
        return now;
    }

    void goOn(Duration span) {
        now = now.plus(span);
    }
}
