package tamabako.paper.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
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

    private final Map<String, TrueTypeFont> read = new ConcurrentHashMap<>();

    private PrintFonts() {}

    @Override
    public double width(Face face, String text) {
        return text.codePoints().mapToDouble(character -> advance(face, character)).sum();
    }

    @Override
    public boolean prints(int codePoint) {
        return has(cut(Face.REGULAR), codePoint) || has(whole(Face.REGULAR), codePoint);
    }

    /// The font for `text`: the cut if it has all characters, else the whole.
    TrueTypeFont fontFor(Face face, String text) {
        TrueTypeFont cut = cut(face);
        return text.codePoints().allMatch(character -> has(cut, character)) ? cut : whole(face);
    }

    private double advance(Face face, int codePoint) {
        TrueTypeFont font = has(cut(face), codePoint) ? cut(face) : whole(face);
        try {
            int units = font.getAdvanceWidth(glyphs(font).getGlyphId(codePoint));
            return units / (double) font.getUnitsPerEm();
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot measure the print font.", failed);
        }
    }

    private static boolean has(TrueTypeFont font, int codePoint) {
        return glyphs(font).getGlyphId(codePoint) != 0;
    }

    private static CmapLookup glyphs(TrueTypeFont font) {
        try {
            return font.getUnicodeCmapLookup();
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the print font.", failed);
        }
    }

    private TrueTypeFont cut(Face face) {
        return font(name(face) + "-cut.ttf");
    }

    private TrueTypeFont whole(Face face) {
        return font(name(face) + ".ttf");
    }

    private static String name(Face face) {
        return switch (face) {
            case REGULAR -> "BIZUDPGothic-Regular";
            case BOLD -> "BIZUDPGothic-Bold";
        };
    }

    private TrueTypeFont font(String file) {
        return read.computeIfAbsent(file, PrintFonts::parse);
    }

    private static TrueTypeFont parse(String file) {
        try (InputStream stream =
                Objects.requireNonNull(
                        PrintFonts.class.getResourceAsStream("/fonts/" + file), file)) {
            TrueTypeFont font =
                    new TTFParser().parse(new RandomAccessReadBuffer(stream.readAllBytes()));
            font.setEnableGsub(false);
            return font;
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the print font " + file + ".", failed);
        }
    }
}
