package tamabako.records.roster;

import java.util.regex.Pattern;

/// Keeps a spreadsheet from taking a text for a formula: one that begins with `=`, `+`, `-`, `@`, a
/// tab or the like gets an apostrophe in front (OWASP ASVS 5.0.0, V1.2.10). When it is read again
/// the apostrophe goes.
final class FormulaGuard {

    private static final Pattern FORMULA =
            Pattern.compile("'*[=+\\-@＝＋－＠\\t\\r\\x00].*", Pattern.DOTALL);

    private FormulaGuard() {}

    static String on(String text) {
        return FORMULA.matcher(text).matches() ? "'" + text : text;
    }

    static String off(String text) {
        return text.startsWith("'") && FORMULA.matcher(text).matches() ? text.substring(1) : text;
    }
}
