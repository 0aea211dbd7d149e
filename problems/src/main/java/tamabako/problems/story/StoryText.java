package tamabako.problems.story;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// The story of a template in one language, with blanks for its numbers and names.
///
/// `{n}` is a number, `{n:yen}` an amount, `{n:pencil|pencils}` a number and its noun in the
/// singular or plural, `{name}` and `{other}` are names.
record StoryText(String language, String text) {

    private static final Pattern BLANK =
            Pattern.compile("\\{([a-z]+)(?::(?:(yen)|([^|}]+)\\|([^}]+)))?}");

    private static final Set<String> NAMES = Set.of("name", "other");

    /// The names of the numbers that are told.
    Set<String> numbers() {
        Set<String> numbers = new TreeSet<>();
        BLANK.matcher(text).results().forEach(blank -> numbers.add(blank.group(1)));
        numbers.removeAll(NAMES);
        return numbers;
    }

    /// Whether a brace stands there that is none of a blank.
    boolean hasLooseBrace() {
        return BLANK.matcher(text).replaceAll("").matches("(?s).*[{}].*");
    }

    String fill(Map<String, BigDecimal> given, Map<String, String> names) {
        return BLANK.matcher(text)
                .replaceAll(blank -> {
                    String name = blank.group(1);
                    String filled =
                            NAMES.contains(name)
                                    ? Objects.requireNonNull(names.get(name))
                                    : told(Objects.requireNonNull(given.get(name)), blank::group);
                    return Matcher.quoteReplacement(filled);
                });
    }

    private String told(BigDecimal number, IntFunction<String> group) {
        String figures = figures(number);
        if (group.apply(2) != null) {
            return language.equals("ja") ? figures + "円" : "¥" + figures;
        }
        if (group.apply(3) == null) {
            return figures;
        }
        boolean one = number.compareTo(BigDecimal.ONE) == 0;
        return figures + " " + (one ? group.apply(3) : group.apply(4));
    }

    /// With a comma before every three whole digits.
    static String figures(BigDecimal number) {
        String plain = StorySum.plain(number).toPlainString();
        int point = plain.indexOf('.');
        String whole =
                String.format(
                        Locale.ROOT, "%,d", number.setScale(0, RoundingMode.DOWN).toBigInteger());
        return point < 0 ? whole : whole + plain.substring(point);
    }
}
