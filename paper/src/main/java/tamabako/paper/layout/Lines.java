package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;

/// Breaks a text into lines: after a blank where there is one, else between any two characters, as
/// Japanese is broken.
final class Lines {

    private Lines() {}

    /// Lines of `text` that are no wider than `width` points at `size`.
    static List<String> of(Measure measure, Face face, double size, String text, double width) {
        List<String> lines = new ArrayList<>();
        String rest = text;
        while (size * measure.width(face, rest) > width) {
            int fits = fitting(measure, face, size, rest, width);
            int blank = rest.lastIndexOf(' ', fits);
            int end = blank > 0 ? blank : fits;
            lines.add(rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        lines.add(rest);
        return lines;
    }

    /// How many characters of `text` fit, at least one.
    private static int fitting(Measure measure, Face face, double size, String text, double width) {
        int end = text.offsetByCodePoints(0, 1);
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            if (size * measure.width(face, text.substring(0, next)) > width) {
                break;
            }
            end = next;
        }
        return end;
    }
}
