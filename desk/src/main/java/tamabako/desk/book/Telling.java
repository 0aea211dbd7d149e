package tamabako.desk.book;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import tamabako.desk.web.Days;
import tamabako.desk.web.Words;

/// Tells days and times to one reader.
///
/// @param clock tells the moment
/// @param zone where the lessons are held
/// @param words the reader's language
record Telling(InstantSource clock, ZoneId zone, Words words) {

    /// The day of today, where the lessons are held.
    LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone);
    }

    String day(Instant moment) {
        return new Days(zone).say(moment, words.language());
    }

    String day(LocalDate day) {
        return Days.say(day, words.language());
    }

    /// A day or a moment written as ISO 8601; nothing for nothing.
    String day(String iso) {
        return iso.isEmpty()
                ? ""
                : iso.contains("T") ? day(Instant.parse(iso)) : day(LocalDate.parse(iso));
    }

    /// How long something took, such as `1 min 35 s`.
    String time(Duration took) {
        long minutes = took.toMinutes();
        long seconds = took.toSecondsPart();
        return minutes == 0
                ? words.say("book.seconds", seconds)
                : words.say("book.minutes", minutes, seconds);
    }

    /// How long one answer took, with a tenth of a second.
    String tenths(Duration took) {
        return words.say("book.seconds", "%d.%d".formatted(took.toSeconds(), tenth(took)));
    }

    private static int tenth(Duration took) {
        return took.toMillisPart() / 100;
    }
}
