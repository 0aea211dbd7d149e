package tamabako.showing.safety;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/// Numbers drawn by the JDK in the fonts of the check values, and showings of them.
final class Drawn {

    private static final int MARGIN = 12;

    private final String font;
    private final double figureHeight;
    private final Colour ink;
    private final Colour ground;

    /// @param font `Bold` or `Regular`
    /// @param figureHeight the height of a 7 in pixels
    Drawn(String font, double figureHeight, String ink, String ground) {
        this.font = font.equals("Bold") ? "DejaVuSans-Bold" : "DejaVuSans";
        this.figureHeight = figureHeight;
        this.ink = Colour.parse(ink);
        this.ground = Colour.parse(ground);
    }

    /// The number in the middle of a ground that holds `widest`.
    Picture number(String written, String widest) {
        BufferedImage image = ground(widest);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(new Color(ink.rgb()));
        GlyphVector glyphs = glyphs(written);
        pen.fill(glyphs.getOutline(MARGIN, image.getHeight() - 2f * MARGIN));
        pen.dispose();
        return picture(image);
    }

    /// The ground alone.
    Picture blank(String widest) {
        return picture(ground(widest));
    }

    /// `count` numbers, each up for `on` and away for `off` frames of a screen of `hertz`.
    List<Shown> showing(List<String> numbers, int count, int on, int off, double hertz) {
        String widest = numbers.getFirst();
        List<Picture> drawn = numbers.stream().map(each -> number(each, widest)).toList();
        Picture blank = blank(widest);
        List<Shown> shown = new ArrayList<>(List.of(new Shown(0, blank)));
        double frame = 1000 / hertz;
        for (int k = 0; k < count; k++) {
            double at = 1000 + k * (on + off) * frame;
            shown.add(new Shown(at, drawn.get(k % drawn.size())));
            if (off > 0) {
                shown.add(new Shown(at + on * frame, blank));
            }
        }
        return shown;
    }

    private BufferedImage ground(String widest) {
        double width = glyphs(widest).getLogicalBounds().getWidth();
        BufferedImage image =
                new BufferedImage(
                        (int) Math.ceil(width) + 2 * MARGIN,
                        (int) Math.ceil(figureHeight) + 4 * MARGIN,
                        BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(ground.rgb()));
        pen.fillRect(0, 0, image.getWidth(), image.getHeight());
        pen.dispose();
        return image;
    }

    private GlyphVector glyphs(String written) {
        FontRenderContext context = new FontRenderContext(null, true, true);
        Font plain = load(font).deriveFont(1000f);
        double seven = plain.createGlyphVector(context, "7").getVisualBounds().getHeight();
        Font sized = plain.deriveFont((float) (1000 * figureHeight / seven));
        return sized.createGlyphVector(context, written);
    }

    private static Font load(String name) {
        String path = "/net/sf/jasperreports/fonts/dejavu/" + name + ".ttf";
        try (InputStream file = Objects.requireNonNull(Drawn.class.getResourceAsStream(path))) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (FontFormatException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static Picture picture(BufferedImage image) {
        return new Picture(
                image.getWidth(),
                image.getHeight(),
                ((DataBufferInt) image.getRaster().getDataBuffer()).getData());
    }
}
