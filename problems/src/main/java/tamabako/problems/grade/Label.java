package tamabako.problems.grade;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/// A name or a short text, by language.
///
/// @param texts the text by language tag, `en` at least
public record Label(Map<String, String> texts) {

    public Label {
        texts = Map.copyOf(new TreeMap<>(texts));
        if (!texts.containsKey("en")) {
            throw new IllegalArgumentException("A label is there in English at least.");
        }
    }

    /// The same text in every language.
    public static Label of(String text) {
        return new Label(Map.of("en", text));
    }

    /// The text in English and in Japanese.
    public static Label of(String english, String japanese) {
        return new Label(Map.of("en", english, "ja", japanese));
    }

    /// The text in a language, in English where there is none in that one.
    public String in(Locale language) {
        String english = Objects.requireNonNull(texts.get("en"));
        return texts.getOrDefault(language.getLanguage(), english);
    }
}
