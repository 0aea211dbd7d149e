package tamabako.desk.book;

import java.time.DateTimeException;
import java.time.LocalDate;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Words;
import tamabako.problems.HalfWidth;

/// A field for a day, as browsers send it or as it is typed: `2026-04-14`.
final class DayField {

    /// No book goes back further.
    private static final int YEARS = 120;

    private DayField() {}

    /// The day; today where it cannot be read, which is told in the form. A day to come is refused.
    static LocalDate read(Form form, String name, LocalDate today, Words words) {
        try {
            String written = HalfWidth.of(form.text(name)).strip().replace('/', '-');
            LocalDate day = LocalDate.parse(written);
            if (day.isAfter(today)) {
                form.blame(name, words.say("book.day-to-come", today));
            } else if (day.isBefore(today.minusYears(YEARS))) {
                form.blame(name, words.say("book.day-unreadable", today));
            }
            return day;
        } catch (DateTimeException unreadable) {
            form.blame(name, words.say("book.day-unreadable", today));
            return today;
        }
    }
}
