package tamabako.desk.entry;

import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tamabako.problems.HalfWidth;

/// A time as teachers write it: minutes and seconds, `4:30`, `4.30` or `4分30秒`.
final class Clocked {

    private static final Pattern WRITTEN =
            Pattern.compile("(\\d{1,3})\\s*[:.'分\\s]\\s*([0-5]?\\d)\\s*[\"秒]?");

    private Clocked() {}

    /// What came of reading a time.
    sealed interface Read {
        /// A time, or none where nothing was written.
        record Good(Optional<Duration> took) implements Read {}

        /// It cannot be told what was meant.
        record Unclear() implements Read {}
    }

    static Read read(String written) {
        String plain = HalfWidth.of(written).strip();
        if (plain.isEmpty()) {
            return new Read.Good(Optional.empty());
        }
        Matcher matcher = WRITTEN.matcher(plain);
        if (!matcher.matches()) {
            return new Read.Unclear();
        }
        Duration took =
                Duration.ofMinutes(Long.parseLong(matcher.group(1)))
                        .plusSeconds(Long.parseLong(matcher.group(2)));
        return took.isZero() ? new Read.Unclear() : new Read.Good(Optional.of(took));
    }

    /// A time as it is typed, such as `4:30`.
    static String write(Duration took) {
        return "%d:%02d".formatted(took.toMinutes(), took.toSecondsPart());
    }
}
