package tamabako.paper.layout;

import tamabako.paper.wish.PageSize;

/// A page and the room on it. Lengths are points (1/72 inch) from the top left corner.
///
/// @param left where print begins from the left; the same room is free at the right
/// @param top where print begins from above
/// @param bottom where the body ends
/// @param foot the line on which the foot of the page stands
public record Page(
        double width, double height, double left, double top, double bottom, double foot) {

    /// Points in a millimetre.
    static final double MM = 72 / 25.4;

    private static final double SIDE = 16 * MM;

    /// How far the body ends above the foot.
    private static final double ABOVE_FOOT = 7 * MM;

    /// What printers leave free at the edges, in millimetres.
    private static final double EDGE = 5;

    /// A page of that size, upright. On A4 all that is printed stays within 178 by 259 mm in its
    /// middle, so that it also prints whole on Letter paper and two punched holes meet no figure.
    public static Page of(PageSize size) {
        double margin =
                switch (size) {
                    case A4, B4 -> 19 * MM;
                    case LETTER -> 14 * MM;
                };
        double foot = size.height() * MM - margin;
        return new Page(
                size.width() * MM, size.height() * MM, SIDE, margin, foot - ABOVE_FOOT, foot);
    }

    /// The same paper lying on its long side, printed as near to its edges as printers can.
    public Page lying() {
        double edge = EDGE * MM;
        return new Page(
                /* width= */ height, /* height= */ width, edge, edge, width - edge, width - edge);
    }

    /// Where print ends at the right.
    public double right() {
        return width - left;
    }

    /// The width of all that is printed.
    public double across() {
        return right() - left;
    }
}
