package tamabako.insight.slip;

import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// The phrases of one language: keys, and templates whose `{names}` are filled in.
final class Phrases {

    private static final Pattern BLANK = Pattern.compile("\\{([a-z]+)}");

    private final ResourceBundle templates;

    Phrases(Locale language) {
        this.templates =
                ResourceBundle.getBundle(
                        "tamabako.insight.slip.words",
                        language,
                        ResourceBundle.Control.getNoFallbackControl(
                                ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /// The phrase for `key`, filled from `values`.
    String say(String key, Map<String, ?> values) {
        Matcher blank = BLANK.matcher(templates.getString(key));
        return blank.replaceAll(found -> {
            Object value = values.get(found.group(1));
            if (value == null) {
                throw new IllegalArgumentException(
                        "Nothing fills {%s} in %s.".formatted(found.group(1), key));
            }
            return Matcher.quoteReplacement(value.toString());
        });
    }
}
