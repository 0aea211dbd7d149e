package tamabako.records.table;

/// Keeps texts from being taken for formulas by spreadsheets.
///
/// Source: OWASP ASVS 5.0.0, V1.2.10: what begins with `=`, `+`, `-`, `@`, a tab or a null gets a
/// single quote in front of it.
final class PlainText {

    private static final String STARTS = "=+-@\t\0\r\n";

    private PlainText() {}

    static String of(String text) {
        return !text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
