package tamabako.problems.words;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tamabako.frame.Technique;

/// Says the reasons of this module in one language.
///
/// A template holds `{name}` where a value goes, and `{name:one|many}` where the wording depends on
/// whether the value is 1; `#` there is the value.
public final class ProblemWords {

    private static final String FILE = "tamabako.problems.words.words";
    private static final Pattern PLACE = Pattern.compile("\\{([a-zA-Z]+)(?::([^|}]*)\\|([^}]*))?}");

    private final ResourceBundle templates;

    private ProblemWords(ResourceBundle templates) {
        this.templates = templates;
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static ProblemWords of(Locale locale) {
        try {
            return new ProblemWords(file(locale));
        } catch (MissingResourceException _) {
            return new ProblemWords(file(Locale.ENGLISH));
        }
    }

    /// The language that is spoken.
    public Locale language() {
        return templates.getLocale();
    }

    /// What, where and how to mend it, in words.
    public String say(Sayable reason) {
        return say(reason.template(), reason.blanks());
    }

    /// The template `key` filled with `values`.
    ///
    /// @throws MissingResourceException if the language has no such template
    public String say(String key, Map<String, ?> values) {
        return PLACE.matcher(templates.getString(key))
                .replaceAll(place -> {
                    Object value = values.get(place.group(1));
                    if (value == null) {
                        throw new IllegalArgumentException(
                                "%s has no value for {%s}.".formatted(key, place.group(1)));
                    }
                    String text = show(value);
                    String one = place.group(2);
                    if (one != null) {
                        text = text.equals("1") ? one : place.group(3).replace("#", text);
                    }
                    return Matcher.quoteReplacement(text);
                });
    }

    private String show(Object value) {
        return switch (value) {
            case Sayable nested -> say(nested);
            case Technique technique -> templates.getString("technique." + technique.word());
            case BigDecimal number -> number.toPlainString();
            case Collection<?> list ->
                    list.stream()
                            .map(this::show)
                            .collect(Collectors.joining(templates.getString("list.between")));
            default -> value.toString();
        };
    }

    private static ResourceBundle file(Locale locale) {
        ResourceBundle found =
                ResourceBundle.getBundle(
                        FILE,
                        Locale.of(locale.getLanguage()),
                        ProblemWords.class.getClassLoader(),
                        ResourceBundle.Control.getNoFallbackControl(
                                ResourceBundle.Control.FORMAT_PROPERTIES));
        return found;
    }
}
