package tamabako.paper.layout;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// Breaks a text into lines where its script allows it: Latin text after blanks, Japanese between
/// any two characters, but with no closing mark at the head of a line and no opening one at its end
/// (kinsoku), and never within a number or between a number and the word that counts it.
final class Lines {

    private static final String ELLIPSIS = "\u2026";

    private Lines() {}

    /// At most `most` lines of `text` that are no wider than `width` points at `size`. What is left
    /// out is shown by an ellipsis.
    static List<String> of(
            Setting setting, Face face, double size, String text, double width, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text;
        while (setting.width(face, size, rest) > width) {
            if (lines.size() == most - 1) {
                double room = width - setting.width(face, size, ELLIPSIS);
                rest = rest.substring(0, fitting(setting, face, size, rest, room)) + ELLIPSIS;
                break;
            }
            int fits = fitting(setting, face, size, rest, width);
            int end = breakBefore(rest, fits);
            lines.add(rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        lines.add(rest);
        return lines;
    }

    /// All lines of `text`.
    static List<String> of(Setting setting, Face face, double size, String text, double width) {
        return of(setting, face, size, text, width, Integer.MAX_VALUE);
    }

    /// The last place up to `fits` at which `text` may be broken; `fits` where there is none.
    private static int breakBefore(String text, int fits) {
        BreakIterator breaks = BreakIterator.getLineInstance(Locale.JAPANESE);
        breaks.setText(text);
        int end = fits;
        if (text.charAt(end) != ' ' && !breaks.isBoundary(end)) {
            end = breaks.preceding(end);
        }
        while (end > 0 && text.charAt(end) != ' ' && Character.isDigit(text.charAt(end - 1))) {
            end = breaks.preceding(end);
        }
        return end > 0 ? end : fits;
    }

    /// How many characters of `text` fit, at least one and never all.
    private static int fitting(Setting setting, Face face, double size, String text, double width) {
        int end = 0;
        double taken = 0;
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            taken += setting.width(face, size, text.substring(end, next));
            if (end > 0 && (taken > width || next == text.length())) {
                break;
            }
            end = next;
        }
        return end;
    }
}
