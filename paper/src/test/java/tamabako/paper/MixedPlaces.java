package tamabako.paper;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tamabako.paper.layout.Decoration;
import tamabako.paper.layout.Element;
import tamabako.paper.layout.Ink;
import tamabako.paper.layout.Laid;
import tamabako.paper.layout.Mark;
import tamabako.paper.layout.Role;

/// The cells of a mixed sheet, and which of them each problem is in.
final class MixedPlaces {

    private static final double HALF_A_POINT = 0.5;

    /// The height of a page that no page has, so that cells of two pages do not meet.
    private static final double APART = 2000;

    private MixedPlaces() {}

    /// A cell on its page, from 0.
    record Cell(int page, Rectangle2D frame) {}

    /// All that has a fine frame around it.
    static List<Cell> cells(Laid laid) {
        List<Cell> cells = new ArrayList<>();
        for (Decoration decoration : laid.decorations()) {
            for (Mark mark : decoration.marks()) {
                if (mark
                                instanceof
                                Mark.Box(double x, double y, double width, double height, Ink ink)
                        && ink == Ink.HAIR) {
                    cells.add(
                            new Cell(
                                    decoration.page(),
                                    new Rectangle2D.Double(x, y, width, height)));
                }
            }
        }
        return cells;
    }

    /// For each problem, in reading order, the cells that hold some of its marks; more than one
    /// would be wrong.
    static List<Cell> cellsOfProblems(Laid laid, List<Cell> cells) {
        return tables(laid.elements().stream())
                .flatMap(table ->
                        leaves(table)
                                .flatMap(leaf ->
                                        leaf.marks().stream()
                                                .map(mark -> holding(cells, leaf.page(), mark)))
                                .distinct())
                .toList();
    }

    /// The cells a little smaller, with those of later pages below.
    static List<Rectangle2D> insides(List<Cell> cells) {
        return cells.stream()
                .map(cell ->
                        (Rectangle2D)
                                new Rectangle2D.Double(
                                        cell.frame().getX() + HALF_A_POINT,
                                        cell.frame().getY() + HALF_A_POINT + cell.page() * APART,
                                        cell.frame().getWidth() - 2 * HALF_A_POINT,
                                        cell.frame().getHeight() - 2 * HALF_A_POINT))
                .toList();
    }

    private static Cell holding(List<Cell> cells, int page, Mark mark) {
        double[] place =
                switch (mark) {
                    case Mark.Words words -> new double[] {words.x(), words.baseline()};
                    case Mark.Figures figures -> new double[] {figures.x(), figures.baseline()};
                    case Mark.Radical radical -> new double[] {radical.x(), radical.baseline()};
                    case Mark.Rule _, Mark.Box _, Mark.Bead _, Mark.Dot _ ->
                            throw new AssertionError("Nobody reads " + mark);
                };
        List<Cell> holding =
                cells.stream()
                        .filter(cell -> cell.page() == page)
                        .filter(cell -> cell.frame().contains(place[0], place[1]))
                        .toList();
        if (holding.size() != 1) {
            throw new AssertionError(mark + " is in " + holding);
        }
        return holding.getFirst();
    }

    private static Stream<Element> tables(Stream<Element> elements) {
        return elements.flatMap(element ->
                switch (element) {
                    case Element.Group(Role role, _) when role == Role.TABLE -> Stream.of(element);
                    case Element.Group(_, List<Element> parts) -> tables(parts.stream());
                    case Element.Leaf _ -> Stream.empty();
                });
    }

    private static Stream<Element.Leaf> leaves(Element element) {
        return switch (element) {
            case Element.Group(_, List<Element> parts) ->
                    parts.stream().flatMap(MixedPlaces::leaves);
            case Element.Leaf leaf -> Stream.of(leaf);
        };
    }
}
