package tamabako.voice.number;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// One rule of [SpellingRules].
///
/// @param divisor what the number is divided by
/// @param parts what is said, in order
record Rule(long divisor, List<Part> parts) {

    private static final Pattern PIECE =
            Pattern.compile("\\[(?:(<|>=|=)(\\d{1,18}))?([^\\[\\]]*)]|([^\\[\\]]+)");
    private static final Pattern PLACE = Pattern.compile("\\{([qrn])(?::([a-z]+))?}");

    Rule {
        parts = List.copyOf(parts);
    }

    /// Text that is said if the rest lies from `least` to below `below`.
    record Part(String text, long least, long below) {}

    static Rule parse(String text, long divisor) {
        List<Part> parts = new ArrayList<>();
        Matcher piece = PIECE.matcher(text);
        int read = 0;
        while (piece.find() && piece.start() == read) {
            read = piece.end();
            parts.add(
                    piece.group(4) != null
                            ? new Part(piece.group(4), 0, Long.MAX_VALUE)
                            : bracket(piece));
        }
        if (read != text.length()) {
            throw new IllegalArgumentException("Cannot read the rule \"" + text + "\".");
        }
        return new Rule(divisor, parts);
    }

    private static Part bracket(Matcher piece) {
        String text = piece.group(3);
        if (piece.group(1) == null) {
            return new Part(text, 1, Long.MAX_VALUE);
        }
        long bound = Long.parseLong(piece.group(2));
        return switch (piece.group(1)) {
            case "<" -> new Part(text, 1, bound);
            case "=" -> new Part(text, bound, bound + 1);
            default -> new Part(text, bound, Long.MAX_VALUE);
        };
    }

    String say(long number, SpellingRules rules) {
        long rest = number % divisor;
        StringBuilder said = new StringBuilder();
        for (Part part : parts) {
            if (rest >= part.least() && rest < part.below()) {
                said.append(fill(part.text(), number, rules));
            }
        }
        return said.toString();
    }

    private String fill(String text, long number, SpellingRules rules) {
        return PLACE.matcher(text)
                .replaceAll(place -> {
                    long value =
                            switch (place.group(1)) {
                                case "q" -> number / divisor;
                                case "r" -> number % divisor;
                                default -> number;
                            };
                    String set = place.group(2) == null ? "" : place.group(2);
                    return Matcher.quoteReplacement(rules.say(set, value));
                });
    }
}
