package tamabako.desk.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;

/// The languages that the desk speaks: one for each file `words/desk_xx.properties`.
///
/// A language is added by adding that file; nothing else has to be told.
public final class Languages {

    /// The cookie that keeps the reader's choice.
    public static final String COOKIE = "language";

    private final Map<String, Words> byTag = new TreeMap<>();

    private Languages() {}

    /// Reads every language of the desk's own file and of `more` files.
    public static Languages of(List<String> more) {
        Languages languages = new Languages();
        Map<String, String> english = read("en", more);
        for (String tag : Locale.getISOLanguages()) {
            if (file("desk", tag).isPresent()) {
                Words words = new Words(Locale.of(tag), read(tag, more), english);
                languages.byTag.put(tag, words);
            }
        }
        return languages;
    }

    /// All of them, in the order of their tags.
    public List<Words> all() {
        return List.copyOf(byTag.values());
    }

    /// The words of that language, if the desk speaks it.
    public Optional<Words> find(String tag) {
        return Optional.ofNullable(byTag.get(tag));
    }

    /// English, which every text has.
    public Words english() {
        return find("en").orElseThrow();
    }

    /// The language for a reader: the one chosen, else the first of those the browser prefers, else
    /// English.
    ///
    /// @param chosen the value of the cookie
    /// @param accepted the value of the header Accept-Language
    public Words choose(Optional<String> chosen, Optional<String> accepted) {
        return chosen.flatMap(this::find)
                .or(() -> accepted.flatMap(this::preferred))
                .orElseGet(this::english);
    }

    private Optional<Words> preferred(String accepted) {
        try {
            return Locale.LanguageRange.parse(accepted).stream()
                    .map(range -> range.getRange().split("-", 2)[0])
                    .flatMap(tag -> find(tag).stream())
                    .findFirst();
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    private static Map<String, String> read(String tag, List<String> more) {
        Map<String, String> texts = new HashMap<>(read("desk", tag));
        more.stream()
                .distinct()
                .flatMap(file -> read(file, tag).entrySet().stream())
                .forEach(text -> {
                    if (texts.putIfAbsent(text.getKey(), text.getValue()) != null) {
                        throw new IllegalStateException(
                                "Two files have a text for \"%s\".".formatted(text.getKey()));
                    }
                });
        return texts;
    }

    private static Map<String, String> read(String file, String tag) {
        Map<String, String> texts = new HashMap<>();
        file(file, tag).ifPresent(in -> load(in).forEach((k, v) -> texts.put("" + k, "" + v)));
        return texts;
    }

    private static Properties load(InputStream file) {
        try (var reader = new InputStreamReader(file, StandardCharsets.UTF_8)) {
            Properties properties = new Properties();
            properties.load(reader);
            return properties;
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the desk's words.", failed);
        }
    }

    private static Optional<InputStream> file(String file, String tag) {
        String name = "/words/" + file + "_" + tag + ".properties";
        return Optional.ofNullable(Languages.class.getResourceAsStream(name));
    }
}
