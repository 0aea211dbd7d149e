package tamabako.problems.setting;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What papers are, as `reference/published-papers.txt` has it from the sources; no ladder file is
/// read for it.
final class PublishedPapers {

    private static final String FILE = "/reference/published-papers.txt";

    /// One line of the file.
    ///
    /// @param kind `paper`, or the kind of the problems in the stretch
    /// @param first the first place of the stretch in its section, from 1
    /// @param values what is asked, by its key; a key without value is its own value
    record Line(
            String ladder,
            String grade,
            String section,
            int first,
            int last,
            String kind,
            Map<String, String> values) {

        boolean has(String key) {
            return values.containsKey(key);
        }

        String value(String key) {
            return values.getOrDefault(key, "");
        }

        /// Whether `number` is the value of `key`, or in its range; true where nothing is said.
        boolean allows(String key, int number) {
            if (!has(key)) {
                return true;
            }
            String[] range = value(key).split("-", 2);
            int least = Integer.parseInt(range[0]);
            int most = Integer.parseInt(range[range.length - 1]);
            return number >= least && number <= most;
        }
    }

    private PublishedPapers() {}

    /// The lines of one paper.
    static List<Line> of(String ladder, String grade) {
        return LINES.stream()
                .filter(line -> line.ladder().equals(ladder) && line.grade().equals(grade))
                .toList();
    }

    private static final List<Line> LINES = read();

    private static List<Line> read() {
        try (InputStream file = PublishedPapers.class.getResourceAsStream(FILE)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(PublishedPapers::line)
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static Line line(String text) {
        String[] halves = text.split(": ", 2);
        List<String> head = new ArrayList<>(List.of(halves[0].split(" ", -1)));
        Map<String, String> values = new LinkedHashMap<>();
        for (String value : halves[1].split(" ", -1)) {
            String[] pair = value.split("=", 2);
            values.put(pair[0], pair[pair.length - 1]);
        }
        if (head.size() == 3) {
            return new Line(head.get(0), head.get(1), "", 0, 0, head.get(2), values);
        }
        String[] places = head.get(3).split("-", 2);
        return new Line(
                head.get(0),
                head.get(1),
                head.get(2),
                Integer.parseInt(places[0]),
                Integer.parseInt(places[1]),
                head.get(4),
                values);
    }
}
