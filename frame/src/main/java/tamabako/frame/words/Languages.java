package tamabako.frame.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/// The languages that the words of the trade are kept in: those for which there is a file
/// `words_<language>.properties` beside this class.
public final class Languages {

    private Languages() {}

    /// Every language, English first, the others by their codes.
    public static List<Locale> all() {
        return Found.ALL;
    }

    /// The language of `locale`, or English where there is no file for it.
    public static Locale nearest(Locale locale) {
        Locale language = Locale.of(locale.getLanguage());
        return all().contains(language) ? language : Locale.ENGLISH;
    }

    private static final class Found {

        static final List<Locale> ALL =
                Stream.concat(
                                Stream.of(Locale.ENGLISH.getLanguage()),
                                Arrays.stream(Locale.getISOLanguages()).sorted())
                        .distinct()
                        .filter(Found::hasFile)
                        .map(Locale::of)
                        .toList();

        private static boolean hasFile(String language) {
            return Languages.class.getResource("words_" + language + ".properties") != null;
        }
    }
}
