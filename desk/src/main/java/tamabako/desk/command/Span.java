package tamabako.desk.command;

import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A number or a range of numbers, written `2` or `2-4`.
record Span(int least, int most) {

    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,4})(?:\\s*-\\s*(\\d{1,4}))?");

    /// Reads a written span; `refuse` makes the exception for one that is none.
    static Span parse(String written, Function<String, ? extends RuntimeException> refuse) {
        Matcher matcher = WRITTEN.matcher(written.strip());
        if (!matcher.matches()) {
            throw refuse.apply(
                    "\""
                            + written
                            + "\" is no number of digits. Write one such as 2, or a range such as"
                            + " 2-4.");
        }
        int least = Integer.parseInt(matcher.group(1));
        int most = matcher.group(2) == null ? least : Integer.parseInt(matcher.group(2));
        return new Span(least, most);
    }
}
