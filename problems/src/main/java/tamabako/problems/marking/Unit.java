package tamabako.problems.marking;

import java.util.Currency;

/// A currency as amounts are written in it.
///
/// @param code its ISO 4217 code
/// @param sign what stands before the number; empty where nothing does
/// @param places the decimals that amounts are written with: 0 for yen, 2 for dollars
record Unit(String code, String sign, int places) {

    static Unit of(String code) {
        String sign =
                switch (code) {
                    case "JPY", "CNY" -> "¥";
                    case "USD" -> "$";
                    case "EUR" -> "€";
                    case "GBP" -> "£";
                    case "KRW" -> "₩";
                    default -> "";
                };
        return new Unit(code, sign, Currency.getInstance(code).getDefaultFractionDigits());
    }

    /// Whether `unit` before a number names this one: its sign or its code. The backslash is the
    /// yen sign of Japanese keyboards.
    boolean isWritten(String unit) {
        return unit.equals(code) || unit.equals(sign) || (unit.equals("\\") && sign.equals("¥"));
    }
}
