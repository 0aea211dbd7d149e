package tamabako.problems.grade.file;

import java.time.Duration;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import tamabako.problems.HalfWidth;
import tamabako.problems.Unreadable;
import tamabako.problems.grade.Span;

/// One value as it is written after its key. A value that does not fit is a mistake; then something
/// that fits is given back in its place, so that reading goes on.
record Value(String key, ScalarNode node, Mistakes mistakes) {

    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");
    private static final Pattern SPAN = Pattern.compile("(\\d{1,6})(?:\\s*[-–~〜]\\s*(\\d{1,6}))?");
    private static final Pattern TIME =
            Pattern.compile("(?:(\\d{1,4})\\s*(?:min|分))?\\s*(?:(\\d{1,5})\\s*(?:s|秒))?");
    private static final Pattern NAME = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");
    private static final int LONGEST_NAME = 40;
    private static final int LONGEST_TIME = 24 * 60 * 60;

    /// As written, full-width digits and signs in half width.
    String written() {
        return HalfWidth.of(node.getValue()).strip();
    }

    void fault(Fault fault) {
        mistakes.add(node, fault);
    }

    int whole(int least, int most) {
        if (WHOLE.matcher(written()).matches()) {
            int number = Integer.parseInt(written());
            if (number >= least && number <= most) {
                return number;
            }
        }
        fault(new Fault.NotWhole(key, shown(), least, most));
        return least;
    }

    Span span(int least, int most) {
        Matcher parts = SPAN.matcher(written());
        if (parts.matches()) {
            int from = Integer.parseInt(parts.group(1));
            int to = parts.group(2) == null ? from : Integer.parseInt(parts.group(2));
            if (from >= least && to >= from && to <= most) {
                return new Span(from, to);
            }
        }
        fault(new Fault.NotASpan(key, shown(), least, most));
        return Span.of(least);
    }

    Duration time() {
        Matcher parts = TIME.matcher(written());
        if (parts.matches()) {
            int seconds = 60 * number(parts.group(1)) + number(parts.group(2));
            if (seconds > 0 && seconds <= LONGEST_TIME) {
                return Duration.ofSeconds(seconds);
            }
        }
        fault(new Fault.NotATime(key, shown()));
        return Duration.ofSeconds(1);
    }

    boolean yes() {
        return switch (written()) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> {
                fault(new Fault.NotYesOrNo(key, shown()));
                yield false;
            }
        };
    }

    <E> E word(Map<String, E> words, E otherwise) {
        E meant = words.get(written());
        if (meant == null) {
            fault(new Fault.UnknownWord(key, shown(), List.copyOf(words.keySet())));
            return otherwise;
        }
        return meant;
    }

    String text(int most) {
        String text = node.getValue().strip();
        if (text.isEmpty() || text.length() > most) {
            fault(new Fault.NotAText(key, text.length(), most));
        }
        return text;
    }

    /// A name that files, commands and addresses call something by.
    String name() {
        if (!NAME.matcher(written()).matches() || written().length() > LONGEST_NAME) {
            fault(new Fault.NotAName(key, shown()));
        }
        return written();
    }

    /// The code of a currency.
    String currency() {
        String code = written().toUpperCase(Locale.ROOT);
        boolean known =
                Currency.getAvailableCurrencies().stream()
                        .anyMatch(currency -> currency.getCurrencyCode().equals(code));
        if (!known) {
            fault(new Fault.NotACurrency(shown()));
        }
        return code;
    }

    String shown() {
        return Unreadable.shown(node.getValue());
    }

    private static int number(@Nullable String digits) {
        return digits == null ? 0 : Integer.parseInt(digits);
    }
}
