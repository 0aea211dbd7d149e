package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;

/// A word with a line to write on, or with what is to stand there.
///
/// @param key the key of the word
/// @param filled what stands on the line already
/// @param after what stands at the end of the line
/// @param share the part of the width of the page
record Field(String key, String filled, String after, double share) {

    private static final double LEAST_FILLED = 7;

    Field sharing(double changed) {
        return new Field(key, filled, after, changed);
    }

    /// Lays `fields` side by side on a line of their own.
    static void layLine(Flow flow, Setting setting, List<Field> fields) {
        flow.down(setting.pick(26, 36));
        double size = setting.size().words();
        double left = setting.left();
        for (Field field : fields) {
            double right = left + field.share() * setting.across();
            field.lay(flow, setting, left, right - (right < setting.right() - 1 ? size : 0));
            left = right;
        }
    }

    private void lay(Flow flow, Setting setting, double left, double right) {
        List<Mark> marks = new ArrayList<>();
        draw(marks, setting, left, right, flow.y(), setting.size().words());
        Optional<Mark> rule = marks.stream().filter(Rule.class::isInstance).findFirst();
        rule.ifPresent(flow::decorate);
        marks.removeIf(Rule.class::isInstance);
        flow.put(flow.leaf(Role.PARAGRAPH, marks));
    }

    void draw(
            List<Mark> marks,
            Setting setting,
            double left,
            double right,
            double baseline,
            double size) {
        String word = setting.words().say(key);
        marks.add(new Words(left, baseline, Face.REGULAR, size, Ink.BLACK, word));
        double start = left + setting.width(Face.REGULAR, size, word) + size * 0.4;
        double end = right;
        if (!after.isEmpty()) {
            marks.add(setting.endingAt(right, baseline, Face.REGULAR, size, Ink.BLACK, after));
            end -= setting.width(Face.REGULAR, size, after) + size * 0.3;
        }
        marks.add(new Rule(start, baseline + 3, end, baseline + 3, 0.6, Ink.LINE));
        if (!filled.isEmpty()) {
            marks.add(filled(setting, start + 2, baseline, size, end - start - 4));
        }
    }

    /// What stands on the line, smaller where it is long, and cut where it is very long.
    private Words filled(Setting setting, double x, double baseline, double size, double room) {
        double shrunk = size * Math.min(1, room / setting.width(Face.REGULAR, size, filled));
        double readable = Math.max(shrunk, LEAST_FILLED);
        String shown = Lines.of(setting, Face.REGULAR, readable, filled, room, 1).getFirst();
        return new Words(x, baseline, Face.REGULAR, readable, Ink.BLACK, shown);
    }
}
