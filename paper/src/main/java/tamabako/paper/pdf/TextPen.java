package tamabako.paper.pdf;

import org.jspecify.annotations.Nullable;
import tamabako.paper.figures.Cells;
import tamabako.paper.layout.Face;
import tamabako.paper.layout.Ink;
import tamabako.paper.layout.Mark;

/// Writes words and figures on one page. It remembers how it wrote last and says only what changes.
final class TextPen {

    /// What digits are moved together so that each takes one cell. Only the narrow 1 and the signs
    /// need a move of their own.
    private static final double CLOSER = Cells.DIGIT - advance('0');

    private final Bytes content;
    private final DocumentFonts fonts;
    private final double height;
    private DocumentFonts.@Nullable Used font;
    private double size;
    private double narrowed = 1;
    private double spacing;
    private Ink ink = Ink.BLACK;

    TextPen(Bytes content, DocumentFonts fonts, double height) {
        this.content = content;
        this.fonts = fonts;
        this.height = height;
    }

    void write(Mark.Words words) {
        content.add("BT ");
        DocumentFonts.Used used = fonts.fontFor(words.face(), words.text());
        use(used, words.size(), words.ink());
        narrow(1, 0);
        at(words.x(), words.baseline());
        content.add('(');
        String text = words.text();
        for (int i = 0; i < text.length(); ) {
            int character = text.codePointAt(i);
            glyph(used.glyph(character));
            i += Character.charCount(character);
        }
        content.add(")Tj ET\n");
    }

    void write(Mark.Figures figures) {
        double wanted = figures.size();
        content.add("BT ");
        DocumentFonts.Used used = fonts.fontFor(Face.REGULAR, figures.text());
        use(used, wanted, Ink.BLACK);
        narrow(Cells.NARROWED, CLOSER * wanted / Cells.NARROWED);
        double inset = inset(figures.text().charAt(0));
        at(figures.x() + wanted * inset, figures.baseline());
        inCells(used, figures.text(), inset);
        content.add("TJ ET\n");
    }

    /// The runs of figures that follow each other by themselves, and between them how far to move
    /// back, in thousandths of the size.
    private void inCells(DocumentFonts.Used used, String text, double from) {
        content.add("[(");
        double cell = 0;
        double pen = from;
        for (int i = 0; i < text.length(); i++) {
            char character = text.charAt(i);
            long back = Math.round((pen - cell - inset(character)) / Cells.NARROWED * 1000);
            if (back != 0) {
                content.add(')').whole(back).add('(');
                pen -= back * Cells.NARROWED / 1000;
            }
            glyph(used.glyph(character));
            pen += advance(character) + CLOSER;
            cell += Cells.width(character);
        }
        content.add(")]");
    }

    /// A glyph by its number, two bytes within a string.
    private void glyph(int number) {
        inString(number >> 8);
        inString(number & 0xFF);
    }

    private void inString(int value) {
        switch (value) {
            case '(', ')', '\\' -> content.add('\\').add(value);
            case '\r' -> content.add("\\r");
            default -> content.add(value);
        }
    }

    private static double inset(char character) {
        return Cells.inset(character, advance(character));
    }

    private static double advance(char character) {
        return Cells.NARROWED * PrintFonts.SHARED.advance(Face.REGULAR, character);
    }

    private void at(double x, double baseline) {
        content.length(x).length(height - baseline).add("Td ");
    }

    private void use(DocumentFonts.Used wanted, double wantedSize, Ink wantedInk) {
        if (!wanted.equals(font) || wantedSize != size) {
            content.add('/').add(wanted.name()).add(' ').factor(wantedSize).add("Tf ");
            font = wanted;
            size = wantedSize;
        }
        if (wantedInk != ink) {
            content.factor(wantedInk.gray()).add("g ");
            ink = wantedInk;
        }
    }

    private void narrow(double wanted, double wantedSpacing) {
        if (wanted != narrowed) {
            content.factor(100 * wanted).add("Tz ");
            narrowed = wanted;
        }
        if (wantedSpacing != spacing) {
            content.factor(wantedSpacing).add("Tc ");
            spacing = wantedSpacing;
        }
    }
}
