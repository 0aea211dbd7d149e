package tamabako.paper.pdf;

import java.util.List;
import tamabako.paper.layout.Face;
import tamabako.paper.layout.Ink;
import tamabako.paper.layout.Mark;

/// Draws marks on one page: writes the operators of its content (ISO 32000-1, annex A).
final class Pen {

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

    private final Bytes content = new Bytes();
    private final TextPen text;
    private final double height;
    private int elements;

    /// @param height of the page; PDF counts from its bottom
    Pen(DocumentFonts fonts, double height) {
        this.height = height;
        this.text = new TextPen(content, fonts, height);
    }

    /// What was drawn.
    Bytes content() {
        return content;
    }

    /// Draws marks that are read, and tells under which number (from 0 on each page) they stand.
    int drawRead(String type, List<Mark> marks) {
        content.add('/').add(type).add(" <</MCID ").whole(elements).add(">> BDC\n");
        marks.forEach(this::draw);
        content.add("EMC\n");
        return elements++;
    }

    /// Draws marks that are only seen.
    void drawSeen(List<Mark> marks) {
        content.add("/Artifact BMC\n");
        marks.forEach(this::draw);
        content.add("EMC\n");
    }

    private void draw(Mark mark) {
        switch (mark) {
            case Mark.Words words -> text.write(words);
            case Mark.Figures figures -> text.write(figures);
            case Mark.Radical radical -> radical(radical);
            case Mark.Rule rule -> rule(rule);
            case Mark.Box(double x, double y, double width, double boxHeight, Ink ink) -> {
                line(ink, OUTLINE);
                at(x, y + boxHeight).length(width).length(boxHeight).add("re S\n");
            }
            case Mark.Bead bead -> bead(bead);
            case Mark.Dot dot -> dot(dot);
        }
    }

    private void radical(Mark.Radical radical) {
        double size = radical.size() * RADICAL_SIZE;
        if (radical.degree() == 3) {
            content.add("/Span <</ActualText ").text(CUBE_ROOT).add(">> BDC\n");
            write(radical.x(), radical.baseline() - size * 0.43, size / 2, "3");
        }
        write(radical.x(), radical.baseline(), size, ROOT);
        if (radical.degree() == 3) {
            content.add("EMC\n");
        }
        double bar = radical.baseline() - size * BAR_HEIGHT;
        double start = radical.x() + size * BAR_START;
        rule(new Mark.Rule(start, bar, radical.end(), bar, size * BAR_THICK, Ink.BLACK));
    }

    private void write(double x, double baseline, double size, String sign) {
        text.write(new Mark.Words(x, baseline, Face.REGULAR, size, Ink.BLACK, sign));
    }

    private void rule(Mark.Rule rule) {
        line(rule.ink(), rule.thick());
        at(rule.fromX(), rule.fromY()).add("m ");
        at(rule.toX(), rule.toY()).add("l S\n");
    }

    private void bead(Mark.Bead bead) {
        double edge = bead.height() * 0.55;
        double right = bead.x() + bead.width();
        double middle = bead.y() + bead.height() / 2;
        double bottom = bead.y() + bead.height();
        line(bead.ink(), OUTLINE);
        at(bead.x(), middle).add("m ");
        at(bead.x() + edge, bead.y()).add("l ");
        at(right - edge, bead.y()).add("l ");
        at(right, middle).add("l ");
        at(right - edge, bottom).add("l ");
        at(bead.x() + edge, bottom).add("l s\n");
    }

    /// A line of no length with round ends.
    private void dot(Mark.Dot dot) {
        line(dot.ink(), 2 * dot.radius());
        content.add("1 J ");
        at(dot.x(), dot.y()).add("m ");
        at(dot.x(), dot.y()).add("l S 0 J\n");
    }

    private void line(Ink ink, double thick) {
        content.factor(ink.gray()).add("G ").length(thick).add("w\n");
    }

    /// From the top downward to what PDF counts, from the bottom upward.
    private Bytes at(double x, double y) {
        return content.length(x).length(height - y);
    }
}
