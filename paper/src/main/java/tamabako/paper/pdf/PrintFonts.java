package tamabako.paper.pdf;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import tamabako.paper.layout.Face;
import tamabako.paper.layout.Measure;

/// The print font, BIZ UDPGothic (SIL Open Font License 1.1), made for legibility: two weights,
/// each as the whole font and as a small cut of it.
///
/// The cut holds Latin, Greek, Cyrillic and kana letters, signs, and the kanji of our own words; it
/// is read in a fraction of the time and serves almost every sheet. The whole font is read when a
/// text needs another character. Fonts are read once and shared.
public final class PrintFonts implements Measure {

    /// The only one: fonts are read once.
    public static final PrintFonts SHARED = new PrintFonts();

    /// Reading a whole font would warn that it also has a table of variant forms, which are not
    /// used here. Held, because loggers that nobody holds are forgotten with their level.
    private static final Logger VARIANT_FORMS =
            Logger.getLogger("org.apache.fontbox.ttf.CmapSubtable");

    static {
        VARIANT_FORMS.setLevel(Level.SEVERE);
    }

    private final Map<String, FontFile> read = new ConcurrentHashMap<>();

    private PrintFonts() {}

    @Override
    public double width(Face face, String text) {
        FontFile cut = cut(face);
        double sum = 0;
        int i = 0;
        while (i < text.length()) {
            int character = text.codePointAt(i);
            FontFile font = cut.has(character) ? cut : whole(face);
            sum += font.advance(character);
            i += Character.charCount(character);
        }
        return sum;
    }

    /// The width of a character that the cut has, in parts of its size.
    double advance(Face face, int character) {
        return cut(face).advance(character);
    }

    @Override
    public boolean prints(int codePoint) {
        return cut(Face.REGULAR).has(codePoint) || whole(Face.REGULAR).has(codePoint);
    }

    /// The font for `text`: the cut if it has all characters, else the whole.
    FontFile fontFor(Face face, String text) {
        FontFile cut = cut(face);
        for (int i = 0; i < text.length(); ) {
            int character = text.codePointAt(i);
            if (!cut.has(character)) {
                return whole(face);
            }
            i += Character.charCount(character);
        }
        return cut;
    }

    private FontFile cut(Face face) {
        return switch (face) {
            case REGULAR -> font("BIZUDPGothic-Regular-cut.ttf");
            case BOLD -> font("BIZUDPGothic-Bold-cut.ttf");
        };
    }

    private FontFile whole(Face face) {
        return switch (face) {
            case REGULAR -> font("BIZUDPGothic-Regular.ttf");
            case BOLD -> font("BIZUDPGothic-Bold.ttf");
        };
    }

    private FontFile font(String file) {
        FontFile known = read.get(file);
        return known != null ? known : read.computeIfAbsent(file, FontFile::read);
    }
}
