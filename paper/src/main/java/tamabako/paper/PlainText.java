package tamabako.paper;

import java.text.Normalizer;
import java.util.regex.Pattern;

/// What other people wrote, made ready for print.
final class PlainText {

    /// Marks that have no shape of their own, such as those that choose a form of a kanji; the
    /// print font has one form of each.
    private static final Pattern INVISIBLE =
            Pattern.compile("[\\p{Cf}\\x{FE00}-\\x{FE0F}\\x{E0100}-\\x{E01EF}]");

    private PlainText() {}

    /// `text` with blanks of every kind as one blank, and letters with marks as one character.
    static String of(String text) {
        return INVISIBLE
                .matcher(Normalizer.normalize(text, Normalizer.Form.NFC))
                .replaceAll("")
                .replaceAll("[\\s\\p{Cntrl}]+", " ")
                .strip();
    }
}
