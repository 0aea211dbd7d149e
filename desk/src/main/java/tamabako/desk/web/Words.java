package tamabako.desk.web;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/// The desk's texts in one language. A text it lacks is read in English.
///
/// Texts have places for values: `{0}`, `{1}` ...
public final class Words {

    private final Locale language;
    private final Map<String, String> texts;
    private final Map<String, String> english;

    Words(Locale language, Map<String, String> texts, Map<String, String> english) {
        this.language = language;
        this.texts = Map.copyOf(texts);
        this.english = Map.copyOf(english);
    }

    /// The language.
    public Locale language() {
        return language;
    }

    /// The language as HTML wants it, such as `ja`.
    public String tag() {
        return language.toLanguageTag();
    }

    /// The text of that key, with the values in their places.
    ///
    /// @throws IllegalArgumentException if neither this language nor English has the text
    public String say(String key, Object... values) {
        String text =
                find(key)
                        .orElseThrow(
                                () -> new IllegalArgumentException("No text for \"" + key + "\"."));
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }

    /// The text for a count, which is also the value `{0}`: `KEY.one` where the language has it and
    /// the count is 1, else `KEY`.
    public String count(String key, long count) {
        String one = key + ".one";
        return say(count == 1 && texts.containsKey(one) ? one : key, count);
    }

    /// The text of that key, if there is one.
    public Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key)).or(() -> Optional.ofNullable(english.get(key)));
    }
}
