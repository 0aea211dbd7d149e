package tamabako.paper.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;
import tamabako.paper.figures.Cells;
import tamabako.paper.layout.Face;
import tamabako.paper.layout.Ink;
import tamabako.paper.layout.Mark;

/// Writes words and figures on one page. It remembers how it wrote last and says only what changes.
final class TextPen {

    /// What digits are moved together so that each takes one cell. Only the narrow 1 and the signs
    /// need a move of their own.
    private static final double CLOSER =
            Cells.DIGIT - Cells.NARROWED * PrintFonts.SHARED.width(Face.REGULAR, "0");

    private final PDPageContentStream stream;
    private final DocumentFonts fonts;
    private final double height;
    private @Nullable PDFont font;
    private double size;
    private double narrowed = 1;
    private double spacing;
    private Ink ink = Ink.BLACK;

    TextPen(PDPageContentStream stream, DocumentFonts fonts, double height) {
        this.height = height;
        this.stream = stream;
        this.fonts = fonts;
    }

    void write(Mark.Words words) throws IOException {
        stream.beginText();
        use(fonts.fontFor(words.face(), words.text()), words.size(), words.ink());
        narrow(1, 0);
        at(words.x(), words.baseline());
        stream.showText(words.text());
        stream.endText();
    }

    void write(Mark.Figures figures) throws IOException {
        double size = figures.size();
        stream.beginText();
        use(fonts.fontFor(Face.REGULAR, figures.text()), size, Ink.BLACK);
        narrow(Cells.NARROWED, CLOSER * size / Cells.NARROWED);
        double inset = inset(figures.text().charAt(0));
        at(figures.x() + size * inset, figures.baseline());
        stream.showTextWithPositioning(inCells(figures.text(), inset));
        stream.endText();
    }

    /// The runs of figures that follow each other by themselves, and between them how far to move
    /// back, in thousandths of the size.
    private static Object[] inCells(String text, double from) {
        List<Object> shown = new ArrayList<>();
        StringBuilder run = new StringBuilder();
        double cell = 0;
        double pen = from;
        for (int i = 0; i < text.length(); i++) {
            char character = text.charAt(i);
            long back = Math.round((pen - cell - inset(character)) / Cells.NARROWED * 1000);
            if (back != 0) {
                shown.add(run.toString());
                shown.add((float) back);
                run.setLength(0);
                pen -= back * Cells.NARROWED / 1000;
            }
            run.append(character);
            pen += advance(character) + CLOSER;
            cell += Cells.width(character);
        }
        shown.add(run.toString());
        return shown.toArray();
    }

    private static double inset(char character) {
        return Cells.inset(character, advance(character));
    }

    private static double advance(char character) {
        return Cells.NARROWED * PrintFonts.SHARED.width(Face.REGULAR, String.valueOf(character));
    }

    private void at(double x, double baseline) throws IOException {
        stream.newLineAtOffset(Pen.round(x), Pen.round(height - baseline));
    }

    private void use(PDFont wanted, double wantedSize, Ink wantedInk) throws IOException {
        if (!wanted.equals(font) || wantedSize != size) {
            stream.setFont(wanted, Pen.round(wantedSize));
            font = wanted;
            size = wantedSize;
        }
        if (wantedInk != ink) {
            stream.setNonStrokingColor(wantedInk.gray());
            ink = wantedInk;
        }
    }

    private void narrow(double wanted, double wantedSpacing) throws IOException {
        if (wanted != narrowed) {
            stream.setHorizontalScaling((float) (100 * wanted));
            narrowed = wanted;
        }
        if (wantedSpacing != spacing) {
            stream.setCharacterSpacing(Pen.round(wantedSpacing));
            spacing = wantedSpacing;
        }
    }
}
