package tamabako.paper.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/// The words of print in one language.
///
/// A language without a file of its own is printed in English.
public final class PrintWords {

    private static final Map<String, PrintWords> KNOWN = new ConcurrentHashMap<>();

    private final Locale language;
    private final Properties words;

    private PrintWords(Locale language, Properties words) {
        this.language = language;
        this.words = words;
    }

    /// The words of `language`; only the language of the locale counts, not its country.
    public static PrintWords of(Locale language) {
        return KNOWN.computeIfAbsent(language.getLanguage(), PrintWords::read);
    }

    /// The language that these words are in, `en` where the asked one has no file.
    public Locale language() {
        return language;
    }

    /// The words under `key`, with `{0}`, `{1}`... filled from `parts`. Whole numbers among the
    /// parts stand without separators.
    ///
    /// @throws IllegalArgumentException if the file has no such key
    public String say(String key, Object... parts) {
        String pattern = words.getProperty(key);
        if (pattern == null) {
            throw new IllegalArgumentException(
                    "The words of print (%s) have no \"%s\".".formatted(language, key));
        }
        return new MessageFormat(pattern, Locale.ROOT).format(parts);
    }

    /// All words of the file, which a font must be able to print.
    public String all() {
        return String.join(
                "", words.stringPropertyNames().stream().map(words::getProperty).toList());
    }

    private static PrintWords read(String language) {
        Optional<Properties> own = file(language);
        return new PrintWords(
                Locale.of(own.isPresent() ? language : "en"),
                own.or(() -> file("en")).orElseThrow());
    }

    private static Optional<Properties> file(String language) {
        String name = "words_" + language + ".properties";
        try (InputStream stream = PrintWords.class.getResourceAsStream(name)) {
            if (stream == null) {
                return Optional.empty();
            }
            Properties words = new Properties();
            words.load(
                    new InputStreamReader(Objects.requireNonNull(stream), StandardCharsets.UTF_8));
            return Optional.of(words);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read " + name + ".", failed);
        }
    }
}
