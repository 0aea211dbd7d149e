package tamabako.paper.figures;

import java.math.BigDecimal;
import java.util.Optional;

/// A number as it stands on paper: `figures` up to the units, and the decimal `places` with their
/// point, empty where there are none.
///
/// Grouping is by three from the unit place with a comma, the point stands on the line (JCCI
/// answer-writing rules: 0.25, 1,427.39, 2,905,406).
///
/// @param whole sign, currency sign and the digits up to the units
/// @param decimals the point and the digits after it, or nothing
public record PrintedNumber(String whole, String decimals) {

    /// The minus sign U+2212, as wide as a plus, not a hyphen.
    public static final char MINUS = '\u2212';

    /// The mark between groups of three digits.
    public static final char COMMA = ',';

    /// The decimal point.
    public static final char POINT = '.';

    /// `number` with all its places as they are.
    public static PrintedNumber of(BigDecimal number) {
        return of(number, "");
    }

    /// `number` as an amount, with the sign of `currency` between the minus and the digits.
    ///
    /// @param currency an ISO 4217 code; empty for a plain number
    public static PrintedNumber of(BigDecimal number, Optional<String> currency) {
        return of(number, sign(currency));
    }

    /// What stands before an amount: the sign of `currency` or its code; nothing for a plain
    /// number.
    public static String sign(Optional<String> currency) {
        return currency.map(PrintedNumber::sign).orElse("");
    }

    /// All of it, such as `−¥1,234.50`.
    public String figures() {
        return whole + decimals;
    }

    /// A written number with signs that the print font has: it lacks the won sign.
    public static String printable(String written) {
        return written.replace("\u20a9", "KRW ");
    }

    private static PrintedNumber of(BigDecimal number, String sign) {
        String plain = number.abs().toPlainString();
        int point = plain.indexOf('.');
        String units = point < 0 ? plain : plain.substring(0, point);
        String minus = number.signum() < 0 ? String.valueOf(MINUS) : "";
        String decimals = point < 0 ? "" : POINT + plain.substring(point + 1);
        return new PrintedNumber(minus + sign + grouped(units), decimals);
    }

    private static String grouped(String digits) {
        StringBuilder grouped = new StringBuilder(digits);
        for (int comma = digits.length() - 3; comma > 0; comma -= 3) {
            grouped.insert(comma, COMMA);
        }
        return grouped.toString();
    }

    /// The sign of the currencies that have one in the print font; the code itself for others.
    private static String sign(String currency) {
        return switch (currency) {
            case "JPY", "CNY" -> "\u00a5";
            case "USD" -> "$";
            case "EUR" -> "\u20ac";
            case "GBP" -> "\u00a3";
            default -> currency + " ";
        };
    }
}
