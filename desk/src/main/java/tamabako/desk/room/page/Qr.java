package tamabako.desk.room.page;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/// A QR code to be drawn: a square of `size` modules, the four around it that stay light counted
/// in, and the path that its dark modules make.
public record Qr(int size, String path) {

    private static final int QUIET = 4;

    /// The code of that text.
    static Qr of(String text) {
        try {
            ByteMatrix matrix =
                    Encoder.encode(
                                    text,
                                    ErrorCorrectionLevel.M,
                                    Map.of(
                                            EncodeHintType.CHARACTER_SET,
                                            StandardCharsets.UTF_8.name()))
                            .getMatrix();
            return new Qr(matrix.getWidth() + 2 * QUIET, path(matrix));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("Too long for a QR code: " + text, tooLong);
        }
    }

    /// Neighbours in a row are one piece of the path.
    private static String path(ByteMatrix matrix) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < matrix.getHeight(); y++) {
            int x = 0;
            while (x < matrix.getWidth()) {
                int from = x;
                while (x < matrix.getWidth() && matrix.get(x, y) == 1) {
                    x++;
                }
                if (x > from) {
                    path.append(
                            "M%d %dh%dv1h-%dz"
                                    .formatted(from + QUIET, y + QUIET, x - from, x - from));
                }
                x++;
            }
        }
        return path.toString();
    }
}
