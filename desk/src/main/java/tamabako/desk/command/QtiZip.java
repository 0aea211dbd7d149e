package tamabako.desk.command;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SequencedMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/// A QTI package as a zip file: texts by their paths.
final class QtiZip {

    /// More than a package of the most problems that are made at once has.
    private static final int MOST_FILES = 25_000;

    private static final long MOST_BYTES = 256L * 1024 * 1024;

    /// The same problems make the same bytes.
    private static final LocalDateTime ANY_DAY = LocalDateTime.of(2000, 1, 1, 0, 0);

    private QtiZip() {}

    static void write(Map<String, String> files, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        for (Map.Entry<String, String> file : files.entrySet()) {
            ZipEntry entry = new ZipEntry(file.getKey());
            entry.setTimeLocal(ANY_DAY);
            zip.putNextEntry(entry);
            zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        zip.finish();
    }

    /// The XML files of a package, or the one item that `bytes` are themselves.
    ///
    /// @throws IOException if the package is damaged, or unpacks to more than any package holds
    static SequencedMap<String, String> read(byte[] bytes) throws IOException {
        SequencedMap<String, String> files = new LinkedHashMap<>();
        if (bytes.length < 2 || bytes[0] != 'P' || bytes[1] != 'K') {
            files.put("item.xml", new String(bytes, StandardCharsets.UTF_8));
            return files;
        }
        long left = MOST_BYTES;
        int count = 0;
        try (ZipInputStream zip =
                new ZipInputStream(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                byte[] file = zip.readNBytes((int) Math.min(left + 1, Integer.MAX_VALUE - 8));
                left -= file.length;
                if (left < 0 || ++count > MOST_FILES) {
                    throw new IOException(
                            "The package unpacks to more than %d MB or %d files. Split it."
                                    .formatted(MOST_BYTES >> 20, MOST_FILES));
                }
                if (entry.getName().toLowerCase(Locale.ROOT).endsWith(".xml")) {
                    files.put(entry.getName(), new String(file, StandardCharsets.UTF_8));
                }
            }
        } catch (EOFException | ZipException | IllegalArgumentException damaged) {
            throw new IOException("The package is damaged. Pack or fetch it anew.", damaged);
        }
        return files;
    }
}
