package tamabako.paper.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/// A font as it was read, with the widths of its common characters at hand.
final class FontFile {

    /// Latin to kana.
    private static final int COMMON = 0x3100;

    private final TrueTypeFont font;
    private final CmapLookup glyphs;

    /// Widths in parts of the size; 0 where the font has no such character.
    private final double[] common = new double[COMMON];

    private final int[] commonGlyphs = new int[COMMON];

    private FontFile(TrueTypeFont font) throws IOException {
        this.font = font;
        this.glyphs = font.getUnicodeCmapLookup();
        for (int character = 0; character < COMMON; character++) {
            commonGlyphs[character] = glyphs.getGlyphId(character);
            common[character] = commonGlyphs[character] == 0 ? 0 : measure(character);
        }
    }

    /// Reads the font of that name from the resources.
    static FontFile read(String name) {
        try (InputStream stream =
                Objects.requireNonNull(
                        FontFile.class.getResourceAsStream("/fonts/" + name), name)) {
            TrueTypeFont font =
                    new TTFParser().parse(new RandomAccessReadBuffer(stream.readAllBytes()));
            font.setEnableGsub(false);
            return new FontFile(font);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the print font " + name + ".", failed);
        }
    }

    TrueTypeFont font() {
        return font;
    }

    /// Whether the font has a sign for the character.
    boolean has(int character) {
        return character < COMMON ? common[character] > 0 : glyphs.getGlyphId(character) != 0;
    }

    /// The number of the sign for the character.
    int glyph(int character) {
        return character < COMMON ? commonGlyphs[character] : glyphs.getGlyphId(character);
    }

    /// The width of a character that the font has, in parts of its size.
    double advance(int character) {
        return character < COMMON ? common[character] : measure(character);
    }

    private double measure(int character) {
        try {
            int units = font.getAdvanceWidth(glyphs.getGlyphId(character));
            return units / (double) font.getUnitsPerEm();
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot measure the print font.", failed);
        }
    }
}
