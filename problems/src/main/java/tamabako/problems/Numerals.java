package tamabako.problems;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import tamabako.frame.Frame;
import tamabako.problems.Unreadable.Reason;

/// Numbers in problems, as people write them.
public final class Numerals {

    /// The most digits a number may have: as many as the longest frame has rods.
    public static final int MOST_DIGITS = Frame.MOST_RODS;

    /// Longer than any number with its commas, point, sign and blanks.
    private static final int LONGEST = 100;

    private static final Pattern BEFORE_COMMA = Pattern.compile("[+-]?\\d{1,3}(,\\d{3})*");
    private static final Pattern AFTER_COMMA = Pattern.compile("\\d{3}(\\D.*)?");

    private Numerals() {}

    /// Reads a written number exactly: an optional sign, digits, at most one point. Commas may
    /// stand where they part off three digits each. Full-width characters count as well.
    ///
    /// @throws Unreadable naming the character that does not fit, or the digits and their limit
    public static BigDecimal parse(String written) {
        String shown = Unreadable.shown(written.strip());
        String text = written.length() > LONGEST ? "" : HalfWidth.of(written).strip();
        int skipped = written.length() - written.stripLeading().length();
        checkCharacters(text, shown, skipped);
        String digits = text.replaceAll("\\D", "");
        if (digits.length() > MOST_DIGITS || written.length() > LONGEST) {
            throw new Unreadable(new Reason.NumberTooLong(shown, MOST_DIGITS));
        }
        if (digits.isEmpty()) {
            throw new Unreadable(new Reason.NoNumber(shown));
        }
        return new BigDecimal(text.replace(",", ""));
    }

    private static void checkCharacters(String text, String shown, int skipped) {
        for (int i = 0; i < text.length(); i++) {
            char figure = text.charAt(i);
            boolean fits =
                    switch (figure) {
                        case '+', '-' -> i == 0;
                        case '.' -> text.indexOf('.') == i;
                        case ',' -> true;
                        default -> figure >= '0' && figure <= '9';
                    };
            int position = skipped + i + 1;
            if (!fits) {
                String named = Character.toString(text.codePointAt(i));
                throw new Unreadable(new Reason.NotADigit(shown, named, position));
            }
            if (figure == ',' && !partsOffThree(text, i)) {
                throw new Unreadable(new Reason.CommaMisplaced(shown, position));
            }
        }
    }

    private static boolean partsOffThree(String text, int comma) {
        return BEFORE_COMMA.matcher(text.substring(0, comma)).matches()
                && AFTER_COMMA.matcher(text.substring(comma + 1)).matches();
    }
}
