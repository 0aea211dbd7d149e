package tamabako.records.roster;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/// Unpacks a zip in memory, within limits: whatever a file says of itself, no more than so many
/// files and bytes are unpacked, and folders in names are ignored. It goes by the directory at the
/// end of the file, as the reader of workbooks does (the JDK's stream does not, and refuses what
/// some spreadsheets write).
final class Zipped {

    private static final int MOST_FILES = 500;
    private static final int MOST_BYTES = 64 * 1024 * 1024;

    private Zipped() {}

    /// Whether the bytes begin as a zip does.
    static boolean isZip(byte[] bytes) {
        return bytes.length > 3
                && bytes[0] == 'P'
                && bytes[1] == 'K'
                && bytes[2] == 3
                && bytes[3] == 4;
    }

    /// The files by their names without folders; empty where it is broken or too much.
    @SuppressWarnings("CatchingUnchecked") // a broken file makes the library throw anything
    static Optional<Map<String, byte[]>> unpack(byte[] bytes) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        int left = MOST_BYTES;
        try (ZipFile zip = ZipFile.builder().setByteArray(bytes).get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                if (entry.isDirectory()) {
                    continue;
                }
                byte[] file;
                try (InputStream in = zip.getInputStream(entry)) {
                    file = in.readNBytes(left + 1);
                }
                left -= file.length;
                if (left < 0 || files.size() >= MOST_FILES) {
                    return Optional.empty();
                }
                files.put(entry.getName().replaceFirst("^.*[/\\\\]", ""), file);
            }
            return Optional.of(files);
        } catch (IOException | RuntimeException broken) {
            return Optional.empty();
        }
    }
}
