package tamabako.desk.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/// Tells moments as a reader in one zone says them, such as "14 Apr 2026".
///
/// @param zone where the reader is
public record Days(ZoneId zone) {

    /// A day, as the language writes it.
    public static String say(LocalDate day, Locale language) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withLocale(language)
                .format(day);
    }

    /// The day of that moment, as the language writes it.
    public String say(Instant moment, Locale language) {
        return say(moment.atZone(zone).toLocalDate(), language);
    }
}
