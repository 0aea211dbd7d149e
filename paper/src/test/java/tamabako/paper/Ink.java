package tamabako.paper;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.text.TextPosition;

/// The ink of a printed character, from the outline in the embedded font.
final class Ink {

    private Ink() {}

    /// The smallest box around the ink, in points from the lower left corner of the page.
    static Rectangle2D of(TextPosition position) {
        try {
            PDVectorFont font = (PDVectorFont) position.getFont();
            GeneralPath outline = font.getNormalizedPath(position.getCharacterCodes()[0]);
            AffineTransform toPage = position.getTextMatrix().createAffineTransform();
            toPage.scale(0.001, 0.001);
            outline.transform(toPage);
            return outline.getBounds2D();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /// The middle of the room that the character takes.
    static double middle(TextPosition position) {
        return position.getXDirAdj() + position.getWidthDirAdj() / 2;
    }
}
