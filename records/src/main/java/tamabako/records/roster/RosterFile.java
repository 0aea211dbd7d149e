package tamabako.records.roster;

import java.util.Map;
import java.util.Optional;

/// Reads a roster from the bytes of a file, whatever kind it is of.
public final class RosterFile {

    /// The longest file that is read, in megabytes.
    public static final int MOST_MEGABYTES = 5;

    /// The most lines that are read.
    static final int MOST_LINES = 5_000;

    private static final int MOST_BYTES = MOST_MEGABYTES * 1024 * 1024;

    private RosterFile() {}

    /// The roster in `bytes`: CSV, XLSX, or a OneRoster package.
    public static Read read(byte[] bytes) {
        if (bytes.length == 0) {
            return Read.unreadable(new Remark.NothingInIt());
        }
        if (bytes.length > MOST_BYTES) {
            return Read.unreadable(new Remark.TooBig(MOST_MEGABYTES));
        }
        if (Zipped.isZip(bytes)) {
            return zipped(bytes);
        }
        if (bytes.length > 3 && (bytes[0] & 0xFF) == 0xD0 && (bytes[1] & 0xFF) == 0xCF) {
            return Read.unreadable(new Remark.OldSpreadsheet());
        }
        if (startsWith(bytes, "%PDF") || startsWith(bytes, "{\\rtf")) {
            return Read.unreadable(new Remark.NoRoster());
        }
        return Encodings.decode(bytes)
                .map(decoded ->
                        decoded.text().isBlank()
                                ? Read.unreadable(new Remark.NothingInIt())
                                : decoded.text().indexOf('\0') >= 0
                                        ? Read.unreadable(new Remark.NoRoster())
                                        : GridReading.read(
                                                decoded.kind(), CsvGrid.read(decoded.text())))
                .orElseGet(() -> Read.unreadable(new Remark.OddEncoding()));
    }

    /// The roster in the files of a OneRoster package, by their names.
    public static Read oneRoster(Map<String, byte[]> files) {
        return OneRoster.read(files);
    }

    private static Read zipped(byte[] bytes) {
        Optional<Map<String, byte[]>> files = Zipped.unpack(bytes);
        if (files.isEmpty()) {
            return Read.unreadable(new Remark.NoRoster());
        }
        if (files.get().containsKey("workbook.xml")) {
            return XlsxGrid.read(bytes)
                    .map(grid -> GridReading.read(Read.Kind.XLSX, grid))
                    .orElseGet(() -> Read.unreadable(new Remark.NoRoster()));
        }
        return files.get().containsKey("manifest.csv") || files.get().containsKey("users.csv")
                ? OneRoster.read(files.get())
                : Read.unreadable(new Remark.NoRoster());
    }

    private static boolean startsWith(byte[] bytes, String letters) {
        for (int i = 0; i < letters.length(); i++) {
            if (bytes.length <= i || bytes[i] != letters.charAt(i)) {
                return false;
            }
        }
        return true;
    }
}
