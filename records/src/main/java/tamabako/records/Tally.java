package tamabako.records;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// Counts the rows that go by, and takes a digest of them, table by table.
final class Tally implements WholeBook {

    private final Map<String, Long> counts = new LinkedHashMap<>();
    private final Map<String, MessageDigest> digests = new LinkedHashMap<>();
    private String table = "";

    @Override
    public void table(String name, List<String> columns) {
        table = name;
        counts.putIfAbsent(name, 0L);
        digests.computeIfAbsent(name, _ -> sha256());
    }

    @Override
    public void row(String line) {
        counts.merge(table, 1L, Long::sum);
        MessageDigest digest = digests.computeIfAbsent(table, _ -> sha256());
        digest.update(line.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) '\n');
    }

    /// How many rows each table has.
    Map<String, Long> counts() {
        return counts;
    }

    long count(String name) {
        return counts.getOrDefault(name, 0L);
    }

    /// The digest of the rows of each table; it can be taken once.
    Map<String, String> digests() {
        Map<String, String> taken = new LinkedHashMap<>();
        digests.forEach(
                (name, digest) -> taken.put(name, HexFormat.of().formatHex(digest.digest())));
        return taken;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every JDK has SHA-256.", impossible);
        }
    }
}
