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

    /// Opens `name` as UTF-8 text. Bytes that are no UTF-8 become replacement characters, so that
    /// only their line is refused.
    static BufferedReader open(String name) throws IOException {
        InputStream bytes = name.equals("-") ? System.in : Files.newInputStream(Path.of(name));
        return new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8));
    }
}
