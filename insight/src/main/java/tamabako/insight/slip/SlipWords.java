package tamabako.insight.slip;

import java.util.Locale;

/// Says slips in sentences for a teacher, in one language.
public final class SlipWords {

    private final Locale language;

    private SlipWords(Locale language) {
        this.language = language;
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static SlipWords of(Locale locale) {
        return new SlipWords(locale);
    }

    /// The name of a kind of slip, such as "carry left out".
    public String name(SlipKind kind) {
        throw new UnsupportedOperationException(language + kind.word());
    }

    /// One slip in a sentence.
    public String say(Slip slip) {
        throw new UnsupportedOperationException(language + slip.toString());
    }

    /// The whole finding in a line or two: most likely this, also possible that; or that it cannot
    /// be told.
    public String headline(Finding finding) {
        throw new UnsupportedOperationException(language + finding.expected());
    }
}
