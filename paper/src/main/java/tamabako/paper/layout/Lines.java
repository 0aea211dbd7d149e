package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;

/// Breaks a text into lines: after a blank where there is one, else between any two characters, as
/// Japanese is broken.
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
            int blank = rest.lastIndexOf(' ', fits);
            int end = blank > 0 ? blank : fits;
            lines.add(rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        lines.add(rest);
        return lines;
    }

    /// How many characters of `text` fit, at least one.
    private static int fitting(Setting setting, Face face, double size, String text, double width) {
        int end = text.offsetByCodePoints(0, 1);
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            if (setting.width(face, size, text.substring(0, next)) > width) {
                break;
            }
            end = next;
        }
        return end;
    }
}
