package tamabako.showing.safety;

/// The piece of a screen that fills 10 by 7.5 degrees of a viewer's sight, which stands for the 10
/// degree circle of WCAG 2.2; lengths in CSS pixels.
///
/// Things that flash together may fill a quarter of it: WCAG 2.2, "general flash and red flash
/// thresholds", and technique G176.
///
/// @param width above 0
/// @param height above 0
public record Field(double width, double height) {

    /// Where nobody knows the screen and the seats: WCAG 2.2's rectangle at 1024 by 768.
    public static final Field UNKNOWN = new Field(341, 256);

    private static final double WIDE = Math.toRadians(10);
    private static final double HIGH = Math.toRadians(7.5);

    public Field {
        if (!(width > 0) || !(height > 0)) {
            throw new IllegalArgumentException(
                    "A field has a width and a height: %s by %s.".formatted(width, height));
        }
    }

    /// The field of the nearest viewer.
    ///
    /// @param distance from the nearest eye to the screen, in millimetres
    /// @param screenWidth the width of the picture, in millimetres
    /// @param across the width of the screen in CSS pixels
    /// @param down its height in CSS pixels; no field is larger than the screen
    public static Field of(double distance, double screenWidth, int across, int down) {
        double pixels = distance * across / screenWidth;
        return new Field(Math.min(pixels * WIDE, across), Math.min(pixels * HIGH, down));
    }

    /// How much may flash at once, in square CSS pixels.
    public double limit() {
        return width * height / 4;
    }

    /// The tallest row of numbers, measured over its ink, that stays within the limit however long
    /// it is and however fast it changes; whole CSS pixels.
    public int tallestRow() {
        return (int) Math.floor(height / 4);
    }
}
