package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/// Where a command reads: a file, or standard input for `-`.
final class Source {

    private Source() {}

    /// The most bytes of a file that is read as a whole.
    private static final int MOST_BYTES = 256 * 1024 * 1024;

    /// Opens `name` as UTF-8 text. Bytes that are no UTF-8 become replacement characters, so that
    /// only their line is refused.
    static BufferedReader open(String name) throws IOException {
        return new BufferedReader(new InputStreamReader(stream(name), StandardCharsets.UTF_8));
    }

    /// Everything in `name`.
    ///
    /// @throws IOException if it is longer than is read at once, too
    static byte[] bytes(String name) throws IOException {
        try (InputStream in = stream(name)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new IOException(
                        "The file %s is longer than %d MB. Split it."
                                .formatted(name, MOST_BYTES >> 20));
            }
            return bytes;
        }
    }

    private static InputStream stream(String name) throws IOException {
        return name.equals("-") ? System.in : Files.newInputStream(Path.of(name));
    }
}
