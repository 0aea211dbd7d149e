package tamabako.desk.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/// The styles, scripts and fonts under `/static/`, served from the class path as they are.
///
/// A file is read once and kept. Browsers ask every time whether it changed, and are told by its
/// digest that it did not. The fonts are those that sheets are printed with.
final class StaticFiles {

    private static final Pattern NAME =
            Pattern.compile("/static/([A-Za-z0-9-]+/)*[A-Za-z0-9-]+\\.(css|js|svg|ttf)");
    private static final Map<String, String> TYPES =
            Map.of(
                    "css", "text/css; charset=utf-8",
                    "js", "text/javascript; charset=utf-8",
                    "svg", "image/svg+xml",
                    "ttf", "font/ttf");

    private final Map<String, Reply.Bytes> files = new ConcurrentHashMap<>();

    /// The file at that address, if there is one.
    Optional<Reply.Bytes> find(String path) {
        Reply.Bytes known = files.get(path);
        if (known != null) {
            return Optional.of(known);
        }
        if (!NAME.matcher(path).matches()) {
            return Optional.empty();
        }
        Optional<Reply.Bytes> read = read(path);
        read.ifPresent(file -> files.put(path, file));
        return read;
    }

    private static Optional<Reply.Bytes> read(String path) {
        String resource = path.replaceFirst("^/static/font/", "/fonts/");
        try (InputStream file = StaticFiles.class.getResourceAsStream(resource)) {
            if (file == null) {
                return Optional.empty();
            }
            byte[] bytes = file.readAllBytes();
            String type = TYPES.getOrDefault(path.substring(path.lastIndexOf('.') + 1), "");
            Map<String, String> headers =
                    Map.of("ETag", "\"" + digest(bytes) + "\"", "Cache-Control", "no-cache");
            return Optional.of(new Reply.Bytes(200, type, headers, bytes));
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read " + path + ".", failed);
        }
    }

    private static String digest(byte[] bytes) {
        try {
            byte[] whole = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(whole, 0, 12);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every JDK has SHA-256.", impossible);
        }
    }
}
