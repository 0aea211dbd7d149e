package tamabako.showing.safety;

/// What a screen shows at one time, pixel by pixel.
public final class Picture {

    private final int width;
    private final int height;
    private final int[] pixels;

    /// A picture of `pixels` as `0xRRGGBB`, row by row from the top; higher bits are not looked at.
    ///
    /// @throws IllegalArgumentException if there are not width by height pixels
    public Picture(int width, int height, int[] pixels) {
        if (width < 1 || height < 1 || pixels.length != width * height) {
            throw new IllegalArgumentException(
                    "%d pixels do not make %d by %d.".formatted(pixels.length, width, height));
        }
        this.width = width;
        this.height = height;
        this.pixels = pixels.clone();
    }

    /// In pixels.
    public int width() {
        return width;
    }

    /// In pixels.
    public int height() {
        return height;
    }

    /// The colour at `x` from the left and `y` from the top, as `0xRRGGBB`.
    int rgb(int x, int y) {
        return pixels[y * width + x] & 0xFFFFFF;
    }
}
