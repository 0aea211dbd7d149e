package tamabako.paper.layout;

/// The A4 page (ISO 216, 210 by 297 mm). All that is printed stays within 178 by 259 mm in its
/// middle, so that the page also prints whole on Letter paper and two punched holes meet no figure.
public final class Page {

    /// Points in a millimetre.
    private static final double MM = 72 / 25.4;

    public static final double WIDTH = 210 * MM;
    public static final double HEIGHT = 297 * MM;

    /// Where print begins and ends from left to right.
    public static final double LEFT = 16 * MM;

    public static final double RIGHT = WIDTH - LEFT;

    /// Where print begins from above, and where the body ends.
    public static final double TOP = 19 * MM;

    public static final double BOTTOM = HEIGHT - 26 * MM;

    /// The line on which the foot of the page stands.
    public static final double FOOT = HEIGHT - 19 * MM;

    private Page() {}

    /// The width of all that is printed.
    public static double across() {
        return RIGHT - LEFT;
    }
}
