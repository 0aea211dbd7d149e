package tamabako.desk.account;

import java.time.Duration;
import tamabako.desk.web.Reply;

/// The page for whoever tried too often.
final class Waiting {

    private Waiting() {}

    /// @param rest how long until the next try is heard
    static Reply page(Duration rest) {
        long minutes = rest.plusSeconds(59).toMinutes();
        return minutes <= 1
                ? Reply.trouble(429, "too-often", Math.max(1, rest.plusMillis(999).toSeconds()))
                : Reply.trouble(429, "too-often-long", minutes);
    }
}
