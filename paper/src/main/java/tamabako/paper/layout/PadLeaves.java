package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.Cells;
import tamabako.paper.layout.Mark.Bead;
import tamabako.paper.layout.Mark.Dot;
import tamabako.paper.layout.Mark.Figures;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// The leaves of a slip pad, four on a page that lies on its side, to be cut along its lines and
/// bound at the left: 130 by 85 mm each, five numbered amounts one below the other, the back blank
/// (pads are 8 to 9 by 13 cm; Wikibooks in Japanese, on denpyōzan).
///
/// The leaves stand so that the cut pages stack by themselves: all that lie at the top left are the
/// first leaves in their order, those at the top right follow them, then the lower ones.
///
/// @param name what stands small on every leaf, so that strewn leaves find together again
record PadLeaves(PrintedPad pad, String name, Setting setting) {

    private static final double WIDTH = 130 * Page.MM;
    private static final double HEIGHT = 85 * Page.MM;
    private static final int ACROSS = 2;
    private static final int DOWN = 2;
    private static final int ON_PAGE = ACROSS * DOWN;

    /// The strip at the left where the leaves are bound.
    private static final double BOUND = 20 * Page.MM;

    private static final double MARGIN = 8 * Page.MM;

    /// Cut lines reach so far beyond the leaves.
    private static final double BEYOND = 4 * Page.MM;

    private static final double MOST_FIGURES = 24;
    private static final double LEAST_FIGURES = 12;

    /// The pages, of which the first is number `firstPage` (from 0) of its document.
    ///
    /// @throws Unprintable if an amount is wider than a leaf
    Laid lay(int firstPage) {
        List<Element> elements = new ArrayList<>();
        List<Decoration> decorations = new ArrayList<>();
        int pages = Math.ceilDiv(pad.leaves().size(), ON_PAGE);
        double figures = figures();
        for (int page = 0; page < pages; page++) {
            List<Mark> seen = new ArrayList<>(cutLines());
            for (int place = 0; place < ON_PAGE; place++) {
                int leaf = place * pages + page;
                if (leaf < pad.leaves().size()) {
                    elements.add(leaf(leaf, firstPage + page, place, figures, seen));
                }
            }
            decorations.add(new Decoration(firstPage + page, seen));
        }
        return new Laid(setting.page(), pages, elements, decorations);
    }

    private Element leaf(int leaf, int page, int place, double figures, List<Mark> seen) {
        double left = leftOf(place % ACROSS);
        double top = topOf(place / ACROSS);
        double foot = top + HEIGHT - 5 * Page.MM;
        double right = left + WIDTH - MARGIN;
        String number = setting.words().say("pad.leaf", leaf + 1);
        List<Element> parts = new ArrayList<>();
        List<Mark> named = new ArrayList<>();
        named.add(new Words(left + BOUND, foot, Face.REGULAR, 7, Ink.SOFT, name));
        named.add(setting.endingAt(right, foot, Face.BOLD, 11, Ink.BLACK, number));
        parts.add(new Element.Leaf(Role.PARAGRAPH, page, named));
        parts.add(amounts(pad.leaves().get(leaf), page, left, top, figures, seen));
        seen.add(new Rule(left + BOUND - 8, top, left + BOUND - 8, top + HEIGHT, 0.3, Ink.HAIR));
        double hole = left + BOUND / 2 - 4;
        seen.add(new Dot(hole, top + HEIGHT * 0.25, 1.2, Ink.HAIR));
        seen.add(new Dot(hole, top + HEIGHT * 0.75, 1.2, Ink.HAIR));
        return new Element.Group(Role.SECTION, parts);
    }

    private Element amounts(
            List<String> amounts,
            int page,
            double left,
            double top,
            double figures,
            List<Mark> seen) {
        List<Element> rows = new ArrayList<>();
        double room = HEIGHT - 17 * Page.MM;
        double pitch = room / amounts.size();
        double right = left + WIDTH - MARGIN;
        for (int line = 0; line < amounts.size(); line++) {
            double bottom = top + 6 * Page.MM + (line + 1) * pitch;
            double baseline = bottom - pitch / 2 + figures * 0.38;
            String amount = amounts.get(line);
            double start = right - figures * Cells.width(amount);
            double bead = left + BOUND + 4;
            double middle = bottom - pitch / 2;
            seen.add(new Bead(bead, middle - 9, 34, 18, Ink.LINE));
            seen.add(new Rule(bead, bottom, right, bottom, 0.3, Ink.HAIR));
            String number = String.valueOf(line + 1);
            Mark label = setting.centred(bead + 17, middle + 4.5, Face.BOLD, 12, number);
            List<Mark> figure =
                    amount.isEmpty()
                            ? List.of()
                            : List.of(new Figures(start, baseline, figures, amount));
            rows.add(
                    new Element.Group(
                            Role.ROW,
                            List.of(
                                    new Element.Leaf(Role.HEADS_ROW, page, List.of(label)),
                                    new Element.Leaf(Role.CELL, page, figure))));
        }
        return new Element.Group(Role.TABLE, rows);
    }

    /// One size for the whole pad: as large as its longest amount allows.
    private double figures() {
        double widest = 0;
        String longest = "";
        for (List<String> leaf : pad.leaves()) {
            for (String shown : leaf) {
                if (Cells.width(shown) > widest) {
                    widest = Cells.width(shown);
                    longest = shown;
                }
            }
        }
        double room = WIDTH - BOUND - MARGIN - 46;
        double pitch = (HEIGHT - 17 * Page.MM) / pad.leaves().getFirst().size();
        double figures = Math.min(Math.min(MOST_FIGURES, pitch * 0.7), room / widest);
        if (figures < LEAST_FIGURES) {
            throw new Unprintable(new Reason.TooWide(name, longest, setting.size()));
        }
        return figures;
    }

    /// Along all edges of the leaves, a little beyond them, so that a knife finds them.
    private List<Mark> cutLines() {
        List<Mark> lines = new ArrayList<>();
        double left = leftOf(0);
        double right = leftOf(ACROSS);
        double top = topOf(0);
        double bottom = topOf(DOWN);
        for (int i = 0; i <= ACROSS; i++) {
            double x = leftOf(i);
            lines.add(new Rule(x, top - BEYOND, x, bottom + BEYOND, 0.4, Ink.HAIR));
        }
        for (int i = 0; i <= DOWN; i++) {
            double y = topOf(i);
            lines.add(new Rule(left - BEYOND, y, right + BEYOND, y, 0.4, Ink.HAIR));
        }
        return lines;
    }

    private double leftOf(int place) {
        return (setting.page().width() - ACROSS * WIDTH) / 2 + place * WIDTH;
    }

    private double topOf(int place) {
        return (setting.page().height() - DOWN * HEIGHT) / 2 + place * HEIGHT;
    }
}
