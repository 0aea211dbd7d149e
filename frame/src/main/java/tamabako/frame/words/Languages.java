package tamabako.frame.words;

import java.util.List;
import java.util.Locale;

/// The languages that the words of the trade are kept in: one for each file beside this class.
public final class Languages {

    private Languages() {}

    /// Every language, English first.
    public static List<Locale> all() {
        return List.of(Locale.ENGLISH, Locale.JAPANESE);
    }
}
