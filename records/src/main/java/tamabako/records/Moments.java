package tamabako.records;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;

/// Writes moments as ISO 8601 texts of one length, so that their order as texts is their order in
/// time, in any database.
final class Moments {

    private static final DateTimeFormatter NINE_PLACES =
            new DateTimeFormatterBuilder().appendInstant(9).toFormatter();

    private Moments() {}

    static String write(Instant moment) {
        return NINE_PLACES.format(moment);
    }
}
