package tamabako.records.keeping;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.records.WholeBook;

/// Reads the lines of a backup, and sees that they are whole.
final class BackupReading {

    private static final ObjectMapper JSON = new ObjectMapper();

    /// No row of a class book is that long, in bytes.
    private static final int LONGEST_LINE = 64 * 1024 * 1024;

    private final InputStream in;
    private final MessageDigest digest = Digests.sha256();
    private final Map<String, Long> counts = new LinkedHashMap<>();

    BackupReading(InputStream in) {
        this.in = new BufferedInputStream(in, 1 << 16);
    }

    /// Hands every table and row to `taker`, and then knows whether that was all of it.
    ///
    /// @return the migration that the rows were kept under
    /// @throws IOException if a line is missing, changed or too much
    int read(WholeBook taker) throws IOException {
        int version = object(nextLine()).path("version").asInt(-1);
        String table = "";
        while (true) {
            String line = line().orElseThrow(() -> new IOException("The foot is missing."));
            if (line.startsWith("[")) {
                counts.merge(table, 1L, Long::sum);
                take(line);
                taker.row(line);
                continue;
            }
            JsonNode head = object(line);
            if (head.has("sha256")) {
                check(head);
                return version;
            }
            table = head.path("table").asText();
            counts.put(table, 0L);
            take(line);
            taker.table(table, texts(head.path("columns")));
        }
    }

    private void check(JsonNode foot) throws IOException {
        String whole = HexFormat.of().formatHex(digest.digest());
        Map<String, Long> said = new LinkedHashMap<>();
        foot.path("rows")
                .properties()
                .forEach(row -> said.put(row.getKey(), row.getValue().asLong()));
        if (!foot.path("sha256").asText().equals(whole)
                || !said.equals(counts)
                || line().isPresent()) {
            throw new IOException("The lines are not those that were written.");
        }
    }

    private String nextLine() throws IOException {
        String line = line().orElseThrow(() -> new IOException("There is no line at all."));
        take(line);
        return line;
    }

    private void take(String line) {
        digest.update((line + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static JsonNode object(String line) throws IOException {
        try {
            JsonNode node = JSON.readTree(line);
            if (node.isObject()) {
                return node;
            }
        } catch (JsonProcessingException broken) {
            throw new IOException("A line is broken.", broken);
        }
        throw new IOException("A line is none of a backup.");
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(text -> texts.add(text.asText()));
        return texts;
    }

    private Optional<String> line() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int letter = in.read();
        if (letter < 0) {
            return Optional.empty();
        }
        while (letter != '\n') {
            if (letter < 0 || line.size() >= LONGEST_LINE) {
                throw new IOException("A line has no end.");
            }
            line.write(letter);
            letter = in.read();
        }
        return Optional.of(line.toString(StandardCharsets.UTF_8));
    }
}
