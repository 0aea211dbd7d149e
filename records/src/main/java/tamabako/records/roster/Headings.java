package tamabako.records.roster;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;

/// The headings under which columns are known, in every language. Case, blanks, wide letters and
/// signs make no difference.
final class Headings {

    private static final Map<String, Field> KNOWN = read();

    private Headings() {}

    /// What a column with that heading tells, if that is known.
    static Optional<Field> find(String heading) {
        return Optional.ofNullable(KNOWN.get(key(heading)));
    }

    /// How many of these headings are known.
    static long known(List<String> headings) {
        return headings.stream().filter(heading -> find(heading).isPresent()).count();
    }

    /// Whether these headings say which column names the pupils.
    static boolean nameSomebody(List<String> headings) {
        return headings.stream()
                .flatMap(heading -> find(heading).stream())
                .anyMatch(field -> field == Field.NAME || field == Field.GIVEN_NAME);
    }

    private static String key(String heading) {
        return Normalizer.normalize(heading, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[\\s\\p{P}\\p{S}\\p{C}]+", "");
    }

    private static Map<String, Field> read() {
        Properties file = new Properties();
        try (var in =
                new InputStreamReader(
                        Objects.requireNonNull(
                                Headings.class.getResourceAsStream("columns.properties")),
                        StandardCharsets.UTF_8)) {
            file.load(in);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the headings of rosters.", failed);
        }
        Map<String, Field> known = new HashMap<>();
        file.forEach((field, headings) -> {
            Field meant =
                    Field.valueOf(field.toString().toUpperCase(Locale.ROOT).replace('-', '_'));
            for (String heading : headings.toString().split(",", -1)) {
                Field before = known.putIfAbsent(key(heading), meant);
                if (before != null && before != meant) {
                    throw new IllegalStateException(heading + " means two things.");
                }
            }
        });
        return known;
    }
}
