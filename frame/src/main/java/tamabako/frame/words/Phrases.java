package tamabako.frame.words;

import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// The phrases of one language: keys, and templates whose `{names}` are filled in.
public final class Phrases {

    private static final Pattern BLANK = Pattern.compile("\\{([a-z]+)}");
    private static final Map<File, Phrases> LOADED = new ConcurrentHashMap<>();

    private final Locale language;
    private final ResourceBundle templates;

    private record File(String name, Locale language) {}

    private Phrases(File file) {
        this.language = file.language();
        this.templates =
                ResourceBundle.getBundle(
                        file.name(),
                        language,
                        ResourceBundle.Control.getNoFallbackControl(
                                ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /// The phrases of the language nearest to `locale`, read once from the files
    /// `words_<language>.properties` beside the class `owner`.
    public static Phrases of(Class<?> owner, Locale locale) {
        return LOADED.computeIfAbsent(
                new File(owner.getPackageName() + ".words", Languages.nearest(locale)),
                Phrases::new);
    }

    /// The language of the phrases.
    public Locale language() {
        return language;
    }

    /// Whether there is a phrase for `key`.
    boolean has(String key) {
        return templates.containsKey(key);
    }

    /// Every key, in order.
    Set<String> keys() {
        return new TreeSet<>(templates.keySet());
    }

    /// The template as it stands in the file.
    String template(String key) {
        return templates.getString(key);
    }

    /// The phrase for `key`, filled from `values`.
    ///
    /// @throws java.util.MissingResourceException if there is no such phrase
    /// @throws IllegalArgumentException if nothing fills one of its places
    public String say(String key, Map<String, ?> values) {
        Matcher blank = BLANK.matcher(template(key));
        return blank.replaceAll(found -> {
            Object value = values.get(found.group(1));
            if (value == null) {
                throw new IllegalArgumentException(
                        "Nothing fills {%s} in %s.".formatted(found.group(1), key));
            }
            return Matcher.quoteReplacement(value.toString());
        });
    }

    /// The phrase for `key` in the form that goes with `number`: the key with the number at its end
    /// where there is one, else the plain key.
    String say(String key, int number, Map<String, ?> values) {
        String form = key + "." + number;
        return say(has(form) ? form : key, values);
    }
}
