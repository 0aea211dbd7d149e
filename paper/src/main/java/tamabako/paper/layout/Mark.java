package tamabako.paper.layout;

/// Something drawn. `x` and `y` are points from the top left corner; text stands on `baseline`.
public sealed interface Mark {

    /// Words in the font's own widths.
    record Words(double x, double baseline, Face face, double size, Ink ink, String text)
            implements Mark {}

    /// Figures in their cells, from `x` to the right.
    record Figures(double x, double baseline, double size, String text) implements Mark {}

    /// A radical sign whose bar ends at `end`.
    ///
    /// @param degree 2, or 3 for a small 3 over the sign
    record Radical(double x, double baseline, double size, int degree, double end)
            implements Mark {}

    /// A straight line.
    record Rule(double fromX, double fromY, double toX, double toY, double thick, Ink ink)
            implements Mark {}

    /// An empty box.
    record Box(double x, double y, double width, double height, Ink ink) implements Mark {}

    /// The outline of a bead, as seen from the front: pointed left and right.
    record Bead(double x, double y, double width, double height, Ink ink) implements Mark {}

    /// A filled dot.
    record Dot(double x, double y, double radius, Ink ink) implements Mark {}
}
