package tamabako.frame;

import java.math.BigDecimal;

/// Numbers as people write them.
public final class Figures {

    /// The most characters that are looked at as one number.
    private static final int LONGEST = 64;

    private Figures() {}

    /// Reads a written number exactly: an optional sign, digits with optional grouping commas
    /// between them, and at most one point. Full-width figures and signs, and the marks that a
    /// Japanese keyboard puts on the same keys, count as well.
    ///
    /// @throws Unworkable naming the character that is no digit, or the length and its limit
    public static BigDecimal parse(String written) {
        String text = written.strip();
        if (text.length() > LONGEST) {
            String shown = text.substring(0, LONGEST) + "…";
            throw new Unworkable(
                    new Unworkable.Reason.TooLong(shown, text.length(), Frame.MOST_RODS));
        }
        StringBuilder plain = new StringBuilder(text.length());
        boolean point = false;
        boolean digit = false;
        for (int i = 0; i < text.length(); i++) {
            char figure = narrow(text.charAt(i));
            boolean fits =
                    switch (figure) {
                        case '+', '-' -> i == 0;
                        case '.' -> !point;
                        case ',' -> !point && isDigitAt(text, i - 1) && isDigitAt(text, i + 1);
                        default -> isDigit(figure);
                    };
            if (!fits) {
                String bad = text.substring(i, text.offsetByCodePoints(i, 1));
                throw new Unworkable(new Unworkable.Reason.NotADigit(text, bad, i + 1));
            }
            point |= figure == '.';
            digit |= isDigit(figure);
            if (figure != ',') {
                plain.append(figure);
            }
        }
        if (!digit) {
            throw new Unworkable(new Unworkable.Reason.NoNumber(text));
        }
        return new BigDecimal(plain.toString());
    }

    /// How many whole digits `number` has: 306 has 3, 0.35 has 0, and zeros right after the point
    /// count below that, so 0.0203 has -1. Zero has 1.
    ///
    /// Source: Heffelfinger and Flom, Abacus: Mystery of the Bead, decimals.
    public static int wholeDigits(BigDecimal number) {
        return number.signum() == 0 ? 1 : number.precision() - number.scale();
    }

    /// The digit of `number` at the power of ten `place`, 0 to 9; the sign does not matter.
    public static int digitAt(BigDecimal number, int place) {
        return number.abs()
                .scaleByPowerOfTen(-place)
                .toBigInteger()
                .mod(java.math.BigInteger.TEN)
                .intValue();
    }

    private static boolean isDigitAt(String text, int index) {
        return index >= 0 && index < text.length() && isDigit(narrow(text.charAt(index)));
    }

    private static boolean isDigit(char figure) {
        return figure >= '0' && figure <= '9';
    }

    private static char narrow(char figure) {
        return switch (figure) {
            case '−', '－', '–', '‐', 'ー', '▲', '△' -> '-';
            case '＋' -> '+';
            case '．', '。' -> '.';
            case '，', '、' -> ',';
            default -> figure >= '０' && figure <= '９' ? (char) (figure - '０' + '0') : figure;
        };
    }
}
