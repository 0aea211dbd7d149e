package tamabako.paper.wish;

import java.util.Locale;
import java.util.Optional;

/// How a sheet is to be printed.
///
/// @param language the language of the words of print; one that is not known is printed in English
/// @param part the problems, the key or both
/// @param size normal or large print
/// @param date the date as it is to stand on the paper; empty for a line to write it on
/// @param name the pupil's name; empty for a line to write it on
public record PrintWish(
        Locale language, Part part, Size size, Optional<String> date, Optional<String> name) {

    /// The problems in English at normal size, name and date to be written by hand.
    public static final PrintWish ENGLISH =
            new PrintWish(
                    Locale.ENGLISH, Part.SHEET, Size.NORMAL, Optional.empty(), Optional.empty());

    /// The same in Japanese.
    public static final PrintWish JAPANESE = ENGLISH.in(Locale.JAPANESE);

    /// The same wish in another language.
    public PrintWish in(Locale changed) {
        return new PrintWish(changed, part, size, date, name);
    }

    /// The same wish for another part.
    public PrintWish with(Part changed) {
        return new PrintWish(language, changed, size, date, name);
    }

    /// The same wish in another size.
    public PrintWish with(Size changed) {
        return new PrintWish(language, part, changed, date, name);
    }

    /// The same wish with the date printed.
    public PrintWish onDate(String changed) {
        return new PrintWish(language, part, size, Optional.of(changed), name);
    }

    /// The same wish with the pupil's name printed.
    public PrintWish forPupil(String changed) {
        return new PrintWish(language, part, size, date, Optional.of(changed));
    }
}
