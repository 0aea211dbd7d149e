package tamabako.desk.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/// Tells moments with their time of day as a reader in one zone says them, such as "14 Apr 2026,
/// 16:05".
///
/// @param zone where the reader is
public record Moment(ZoneId zone) {

    /// Day and time, as the language writes them.
    public String say(Instant moment, Locale language) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(language)
                .format(moment.atZone(zone));
    }
}
