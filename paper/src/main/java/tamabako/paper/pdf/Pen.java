package tamabako.paper.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import tamabako.paper.layout.Face;
import tamabako.paper.layout.Ink;
import tamabako.paper.layout.Mark;

/// Draws marks on one page.
final class Pen implements AutoCloseable {

    private static final String CUBE_ROOT = "\u221b";
    private static final String ROOT = "\u221a";

    /// How much larger than the figures the sign is, so that its bar clears them.
    private static final double RADICAL_SIZE = 1.15;

    /// Where the bar of the radical sign of the print font lies, in parts of its size.
    private static final double BAR_START = 0.62;

    private static final double BAR_HEIGHT = 1776.5 / 2048;
    private static final double BAR_THICK = 51.0 / 2048;

    /// Boxes and beads are drawn with a line so thick, in points.
    private static final double OUTLINE = 0.7;

    private static final int ROUND_ENDS = 1;
    private static final int FLAT_ENDS = 0;

    private final PDPageContentStream stream;
    private final TextPen text;
    private final double height;
    private int elements;

    Pen(PDDocument document, PDPage page, DocumentFonts fonts) throws IOException {
        this.height = page.getMediaBox().getHeight();
        this.stream = new PDPageContentStream(document, page, AppendMode.OVERWRITE, true);
        this.text = new TextPen(stream, fonts, height);
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
            case Mark.Words words -> text.write(words);
            case Mark.Figures figures -> text.write(figures);
            case Mark.Radical radical -> radical(radical);
            case Mark.Rule rule -> rule(rule);
            case Mark.Box(double x, double y, double width, double height, Ink ink) -> {
                line(ink, OUTLINE);
                stream.addRect(round(x), up(y + height), round(width), round(height));
                stream.stroke();
            }
            case Mark.Bead bead -> bead(bead);
            case Mark.Dot dot -> dot(dot);
        }
    }

    private void radical(Mark.Radical radical) throws IOException {
        double size = radical.size() * RADICAL_SIZE;
        if (radical.degree() == 3) {
            COSDictionary spoken = new COSDictionary();
            spoken.setString(COSName.ACTUAL_TEXT, CUBE_ROOT);
            stream.beginMarkedContent(COSName.getPDFName("Span"), PDPropertyList.create(spoken));
            write(radical.x(), radical.baseline() - size * 0.43, size / 2, "3");
        }
        write(radical.x(), radical.baseline(), size, ROOT);
        if (radical.degree() == 3) {
            stream.endMarkedContent();
        }
        double bar = radical.baseline() - size * BAR_HEIGHT;
        double start = radical.x() + size * BAR_START;
        rule(new Mark.Rule(start, bar, radical.end(), bar, size * BAR_THICK, Ink.BLACK));
    }

    private void write(double x, double baseline, double size, String sign) throws IOException {
        text.write(new Mark.Words(x, baseline, Face.REGULAR, size, Ink.BLACK, sign));
    }

    private void rule(Mark.Rule rule) throws IOException {
        line(rule.ink(), rule.thick());
        stream.moveTo(round(rule.fromX()), up(rule.fromY()));
        stream.lineTo(round(rule.toX()), up(rule.toY()));
        stream.stroke();
    }

    private void bead(Mark.Bead bead) throws IOException {
        double edge = bead.height() * 0.55;
        double right = bead.x() + bead.width();
        float top = up(bead.y());
        float middle = up(bead.y() + bead.height() / 2);
        float bottom = up(bead.y() + bead.height());
        line(bead.ink(), OUTLINE);
        stream.moveTo(round(bead.x()), middle);
        stream.lineTo(round(bead.x() + edge), top);
        stream.lineTo(round(right - edge), top);
        stream.lineTo(round(right), middle);
        stream.lineTo(round(right - edge), bottom);
        stream.lineTo(round(bead.x() + edge), bottom);
        stream.closeAndStroke();
    }

    /// A line of no length with round ends.
    private void dot(Mark.Dot dot) throws IOException {
        line(dot.ink(), 2 * dot.radius());
        stream.setLineCapStyle(ROUND_ENDS);
        stream.moveTo(round(dot.x()), up(dot.y()));
        stream.lineTo(round(dot.x()), up(dot.y()));
        stream.stroke();
        stream.setLineCapStyle(FLAT_ENDS);
    }

    private void line(Ink ink, double thick) throws IOException {
        stream.setStrokingColor(ink.gray());
        stream.setLineWidth(round(thick));
    }

    /// From the top downward to what PDF counts, from the bottom upward.
    private float up(double y) {
        return round(height - y);
    }

    /// To hundredths of a point, which is finer than any printer and keeps files small.
    static float round(double length) {
        return Math.round(length * 100) / 100f;
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
