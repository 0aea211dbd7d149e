package tamabako.records.keeping;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tamabako.records.WholeBook;

/// Writes the lines of a backup: a head, each table with its rows, and a foot with the counts and
/// the digest of all lines before it.
final class BackupWriting implements WholeBook {

    private final OutputStream out;
    private final MessageDigest digest = Digests.sha256();
    private final Map<String, Long> counts = new LinkedHashMap<>();
    private String table = "";

    BackupWriting(OutputStream out, Instant made, int version) {
        this.out = out;
        ObjectNode head = JsonNodeFactory.instance.objectNode();
        line(head.put("made", made.toString()).put("version", version).toString());
    }

    @Override
    public void table(String name, List<String> columns) {
        table = name;
        counts.put(name, 0L);
        ObjectNode head = JsonNodeFactory.instance.objectNode().put("table", name);
        columns.forEach(head.putArray("columns")::add);
        line(head.toString());
    }

    @Override
    public void row(String line) {
        counts.merge(table, 1L, Long::sum);
        line(line);
    }

    /// Writes the foot; gives the counts.
    Map<String, Long> finish() {
        String whole = HexFormat.of().formatHex(digest.digest());
        ObjectNode foot = JsonNodeFactory.instance.objectNode();
        ObjectNode rows = foot.putObject("rows");
        counts.forEach(rows::put);
        line(foot.put("sha256", whole).toString());
        return counts;
    }

    private void line(String line) {
        byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
        digest.update(bytes);
        try {
            out.write(bytes);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
