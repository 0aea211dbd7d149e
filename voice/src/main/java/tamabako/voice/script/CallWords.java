package tamabako.voice.script;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import tamabako.voice.number.MyriadReading;
import tamabako.voice.number.NumberWords;
import tamabako.voice.number.SpellingRules;

/// A caller's words in one language, from the file `calls_xx.properties` beside this class.
///
/// A variant such as `calls_en_GB.properties` holds only what differs from its language.
public final class CallWords {

    private static final Map<Locale, Optional<CallWords>> KNOWN = new ConcurrentHashMap<>();

    private final Locale language;
    private final Map<String, String> texts;
    private final NumberWords numbers;

    private CallWords(Locale language, Map<String, String> texts) {
        this.language = language;
        this.texts = Map.copyOf(texts);
        this.numbers =
                texts.getOrDefault("numbers", "").equals("myriads")
                        ? new MyriadReading()
                        : SpellingRules.of(below("number."));
    }

    /// The words for `language`, if it has a file; the country counts only if there is a file for
    /// it.
    public static Optional<CallWords> find(Locale language) {
        return KNOWN.computeIfAbsent(language, CallWords::read);
    }

    /// The language.
    public Locale language() {
        return language;
    }

    /// How this language says numbers.
    public NumberWords numbers() {
        return numbers;
    }

    /// The units that this language has words for, as ISO 4217 codes, in order.
    public List<String> units() {
        return below("unit.").keySet().stream()
                .filter(key -> key.endsWith(".coins"))
                .map(key -> key.replace(".coins", ""))
                .sorted()
                .toList();
    }

    /// The text of that key, if there is one.
    Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    /// The text of that key; empty where the language says nothing there.
    String text(String key) {
        return texts.getOrDefault(key, "");
    }

    /// The words said under that key: its own `.said`, else the text itself.
    List<String> words(String key) {
        String said = find(key + ".said").orElse(text(key)).strip();
        return said.isEmpty() ? List.of() : Arrays.asList(said.split("\\s+", -1));
    }

    private Map<String, String> below(String prefix) {
        return texts.entrySet().stream()
                .filter(text -> text.getKey().startsWith(prefix))
                .collect(
                        Collectors.toMap(
                                text -> text.getKey().substring(prefix.length()),
                                Map.Entry::getValue));
    }

    private static Optional<CallWords> read(Locale language) {
        Map<String, String> texts = new HashMap<>();
        boolean isThere = read(language.getLanguage(), texts);
        if (!isThere) {
            return Optional.empty();
        }
        boolean hasVariant =
                !language.getCountry().isEmpty()
                        && read(language.getLanguage() + "_" + language.getCountry(), texts);
        Locale found =
                hasVariant
                        ? Locale.of(language.getLanguage(), language.getCountry())
                        : Locale.of(language.getLanguage());
        return Optional.of(new CallWords(found, texts));
    }

    private static boolean read(String name, Map<String, String> texts) {
        try (var file = CallWords.class.getResourceAsStream("calls_" + name + ".properties")) {
            if (file == null) {
                return false;
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(file, StandardCharsets.UTF_8));
            read.forEach((key, text) -> texts.put(key.toString(), text.toString()));
            return true;
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the words of callers.", failed);
        }
    }
}
