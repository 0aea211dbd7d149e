package tamabako.showing.safety;

import java.util.HexFormat;

/// A colour of a screen, in sRGB.
///
/// @param red 0 to 255
/// @param green 0 to 255
/// @param blue 0 to 255
public record Colour(int red, int green, int blue) {

    private static final int MOST = 255;

    /// Where the curve of sRGB turns from a line to a power: WCAG 2.2, "relative luminance".
    private static final double LINEAR_TO = 0.04045;

    private static final double[] LINEAR = linear();

    /// From this share of red on, a colour is a saturated red: WCAG 2.2, "general flash and red
    /// flash thresholds".
    static final double SATURATED = 0.8;

    public Colour {
        if (((red | green | blue) & ~MOST) != 0) {
            throw new IllegalArgumentException(
                    "Red, green and blue are 0 to 255: %d %d %d.".formatted(red, green, blue));
        }
    }

    /// The colour that `0xRRGGBB` stands for; higher bits are not looked at.
    public static Colour of(int rgb) {
        return new Colour(rgb >> 16 & MOST, rgb >> 8 & MOST, rgb & MOST);
    }

    /// Reads `#RRGGBB`.
    ///
    /// @throws IllegalArgumentException if it is written otherwise
    public static Colour parse(String written) {
        if (!written.matches("#[0-9A-Fa-f]{6}")) {
            throw new IllegalArgumentException("Not a colour such as #2A231C: " + written);
        }
        return of(HexFormat.fromHexDigits(written, 1, 7));
    }

    /// Relative luminance, from 0 for black to 1 for white: WCAG 2.2, "relative luminance".
    public double luminance() {
        return 0.2126 * LINEAR[red] + 0.7152 * LINEAR[green] + 0.0722 * LINEAR[blue];
    }

    /// The share of red in the light, from 0 to 1; 0 for black.
    public double redShare() {
        double all = LINEAR[red] + LINEAR[green] + LINEAR[blue];
        return all == 0 ? 0 : LINEAR[red] / all;
    }

    /// Whether it is a saturated red, which may not flash at all here.
    public boolean isSaturatedRed() {
        return redShare() >= SATURATED;
    }

    /// The contrast ratio to `other`, from 1 to 21: WCAG 2.2, "contrast ratio".
    public double contrastTo(Colour other) {
        double mine = luminance() + 0.05;
        double theirs = other.luminance() + 0.05;
        return Math.max(mine, theirs) / Math.min(mine, theirs);
    }

    /// As `0xRRGGBB`.
    public int rgb() {
        return red << 16 | green << 8 | blue;
    }

    @Override
    public String toString() {
        return "#%06X".formatted(rgb());
    }

    private static double[] linear() {
        double[] values = new double[MOST + 1];
        for (int i = 0; i <= MOST; i++) {
            double part = i / (double) MOST;
            values[i] =
                    part <= LINEAR_TO ? part / 12.92 : StrictMath.pow((part + 0.055) / 1.055, 2.4);
        }
        return values;
    }
}
