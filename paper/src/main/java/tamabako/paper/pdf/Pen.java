package tamabako.paper.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import tamabako.paper.figures.Cells;
import tamabako.paper.layout.Face;
import tamabako.paper.layout.Ink;
import tamabako.paper.layout.Mark;
import tamabako.paper.layout.Page;

/// Draws marks on one page.
final class Pen implements AutoCloseable {

    private static final String CUBE_ROOT = "\u221b";
    private static final String ROOT = "\u221a";

    /// Where the bar of the radical sign of the print font lies, in parts of its size. How much
    /// larger than the figures the sign is, so that its bar clears them.
    private static final double RADICAL_SIZE = 1.15;

    private static final double BAR_START = 0.62;

    private static final double BAR_HEIGHT = 1776.5 / 2048;
    private static final double BAR_THICK = 51.0 / 2048;

    private final PDPageContentStream stream;
    private final DocumentFonts fonts;
    private int elements;

    Pen(PDDocument document, PDPage page, DocumentFonts fonts) throws IOException {
        this.stream = new PDPageContentStream(document, page, AppendMode.OVERWRITE, true);
        this.fonts = fonts;
    }

    /// Draws marks that are read, and tells under which number (from 0 on each page) they stand.
    int drawRead(COSName type, List<Mark> marks) throws IOException {
        stream.beginMarkedContent(type, elements);
        drawAll(marks);
        stream.endMarkedContent();
        return elements++;
    }

    /// Draws marks that are only seen.
    void drawSeen(List<Mark> marks) throws IOException {
        stream.beginMarkedContent(COSName.ARTIFACT);
        drawAll(marks);
        stream.endMarkedContent();
    }

    private void drawAll(List<Mark> marks) throws IOException {
        for (Mark mark : marks) {
            draw(mark);
        }
    }

    private void draw(Mark mark) throws IOException {
        switch (mark) {
            case Mark.Words words -> words(words);
            case Mark.Figures figures -> figures(figures);
            case Mark.Radical radical -> radical(radical);
            case Mark.Rule rule -> rule(rule);
            case Mark.Box(double x, double y, double width, double height, Ink ink) -> {
                line(ink, 0.7);
                stream.addRect(flat(x), up(y + height), flat(width), flat(height));
                stream.stroke();
            }
            case Mark.Bead bead -> bead(bead);
            case Mark.Dot dot -> dot(dot);
        }
    }

    private void words(Mark.Words words) throws IOException {
        PDFont font = fonts.fontFor(words.face(), words.text());
        begin(font, words.size(), 1, words.ink());
        stream.newLineAtOffset(flat(words.x()), up(words.baseline()));
        stream.showText(words.text());
        stream.endText();
    }

    private void figures(Mark.Figures figures) throws IOException {
        PDFont font = fonts.fontFor(Face.REGULAR, figures.text());
        begin(font, figures.size(), Cells.NARROWED, Ink.BLACK);
        List<Object> shown = new ArrayList<>();
        double cell = 0;
        double pen = 0;
        for (int i = 0; i < figures.text().length(); i++) {
            char character = figures.text().charAt(i);
            double advance =
                    Cells.NARROWED
                            * PrintFonts.SHARED.width(Face.REGULAR, String.valueOf(character));
            double start = cell + Cells.inset(character, advance);
            if (i == 0) {
                stream.newLineAtOffset(
                        flat(figures.x() + figures.size() * start), up(figures.baseline()));
                pen = start;
            } else {
                long back = Math.round((pen - start) / Cells.NARROWED * 1000);
                shown.add((float) back);
                pen -= back / 1000.0 * Cells.NARROWED;
            }
            shown.add(String.valueOf(character));
            pen += advance;
            cell += Cells.width(character);
        }
        stream.showTextWithPositioning(shown.toArray());
        stream.endText();
    }

    private void radical(Mark.Radical radical) throws IOException {
        double size = radical.size() * RADICAL_SIZE;
        if (radical.degree() == 3) {
            COSDictionary spoken = new COSDictionary();
            spoken.setString(COSName.ACTUAL_TEXT, CUBE_ROOT);
            stream.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(spoken));
            double raised = radical.baseline() - size * 0.43;
            words(new Mark.Words(radical.x(), raised, Face.REGULAR, size / 2, Ink.BLACK, "3"));
        }
        words(new Mark.Words(radical.x(), radical.baseline(), Face.REGULAR, size, Ink.BLACK, ROOT));
        if (radical.degree() == 3) {
            stream.endMarkedContent();
        }
        double bar = radical.baseline() - size * BAR_HEIGHT;
        double start = radical.x() + size * BAR_START;
        rule(new Mark.Rule(start, bar, radical.end(), bar, size * BAR_THICK, Ink.BLACK));
    }

    private void rule(Mark.Rule rule) throws IOException {
        line(rule.ink(), rule.thick());
        stream.moveTo(flat(rule.fromX()), up(rule.fromY()));
        stream.lineTo(flat(rule.toX()), up(rule.toY()));
        stream.stroke();
    }

    private void bead(Mark.Bead bead) throws IOException {
        double edge = bead.height() * 0.55;
        double right = bead.x() + bead.width();
        double bottom = bead.y() + bead.height();
        double middle = bead.y() + bead.height() / 2;
        line(bead.ink(), 0.7);
        stream.moveTo(flat(bead.x()), up(middle));
        stream.lineTo(flat(bead.x() + edge), up(bead.y()));
        stream.lineTo(flat(right - edge), up(bead.y()));
        stream.lineTo(flat(right), up(middle));
        stream.lineTo(flat(right - edge), up(bottom));
        stream.lineTo(flat(bead.x() + edge), up(bottom));
        stream.closeAndStroke();
    }

    /// A line of no length with round ends.
    private void dot(Mark.Dot dot) throws IOException {
        line(dot.ink(), 2 * dot.radius());
        stream.setLineCapStyle(1);
        stream.moveTo(flat(dot.x()), up(dot.y()));
        stream.lineTo(flat(dot.x()), up(dot.y()));
        stream.stroke();
        stream.setLineCapStyle(0);
    }

    private void begin(PDFont font, double size, double narrowed, Ink ink) throws IOException {
        stream.beginText();
        stream.setNonStrokingColor(ink.gray());
        stream.setFont(font, (float) size);
        stream.setHorizontalScaling((float) (100 * narrowed));
    }

    private void line(Ink ink, double thick) throws IOException {
        stream.setStrokingColor(ink.gray());
        stream.setLineWidth((float) thick);
    }

    private static float flat(double length) {
        return (float) length;
    }

    /// From the top downward to what PDF counts, from the bottom upward.
    private static float up(double y) {
        return (float) (Page.HEIGHT - y);
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
