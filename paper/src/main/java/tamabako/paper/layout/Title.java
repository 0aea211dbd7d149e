package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Dot;
import tamabako.paper.layout.Mark.Words;

/// The top of the first page of a part: the beam of a frame as an ornament, the title, and at the
/// right in a box what the part is where it is not for the pupil, such as the key.
///
/// @param label what the part is; empty for the pupil's part
record Title(String text, String label, Setting setting) {

    private static final int MOST_LINES = 3;
    private static final double CLEAR = 12;
    private static final double BEAM = 5;
    private static final int UNIT_POINTS = 9;

    void lay(Flow flow) {
        layBeam(flow);
        double size = setting.pick(17, 24);
        double top = flow.y();
        double width = setting.across() - (label.isEmpty() ? 0 : labelWidth() + CLEAR);
        List<Mark> title = new ArrayList<>();
        for (String line : Lines.of(setting, Face.BOLD, size, text, width, MOST_LINES)) {
            flow.down(size * 1.2);
            title.add(new Words(setting.left(), flow.y(), Face.BOLD, size, Ink.BLACK, line));
        }
        flow.put(flow.leaf(Role.TITLE, title));
        flow.down(setting.pick(6, 8));
        if (!label.isEmpty()) {
            layLabel(flow, top);
        }
    }

    /// The same on later pages, small: the title with the section that goes on there, and the label
    /// or a line for the pupil's name.
    ///
    /// @param section the name of the section; empty where another begins
    /// @param name the pupil's name; empty for a line to write it on
    List<Mark> later(String section, String name) {
        double size = setting.pick(9, 12);
        double baseline = setting.page().top() + size;
        double half = setting.across() / 2;
        List<Mark> marks = new ArrayList<>();
        String told = section.isEmpty() ? text : setting.words().say("paper.later", text, section);
        String title = Lines.of(setting, Face.BOLD, size, told, half - CLEAR, 1).getFirst();
        marks.add(new Words(setting.left(), baseline, Face.BOLD, size, Ink.SOFT, title));
        if (label.isEmpty()) {
            double left = setting.left() + half;
            new Field("name", name, "", 1)
                    .draw(marks, setting, left, setting.right(), baseline, size);
        } else {
            marks.add(
                    setting.endingAt(setting.right(), baseline, Face.BOLD, size, Ink.SOFT, label));
        }
        return marks;
    }

    double laterHeight() {
        return setting.pick(9, 12) + setting.pick(20, 28);
    }

    private void layBeam(Flow flow) {
        double middle = flow.y() + BEAM / 2;
        flow.decorate(new Box(setting.left(), flow.y(), setting.across(), BEAM, Ink.LINE));
        double apart = setting.across() / UNIT_POINTS;
        for (int i = 0; i < UNIT_POINTS; i++) {
            flow.decorate(new Dot(setting.left() + (i + 0.5) * apart, middle, 1.1, Ink.LINE));
        }
        flow.down(BEAM + 6);
    }

    private double labelWidth() {
        return setting.width(Face.BOLD, labelSize(), label) + 2 * CLEAR;
    }

    private double labelSize() {
        return setting.pick(12, 20);
    }

    private void layLabel(Flow flow, double top) {
        double size = labelSize();
        double left = setting.right() - labelWidth();
        flow.decorate(new Box(left, top, labelWidth(), size * 1.7, Ink.BLACK));
        double middle = left + labelWidth() / 2;
        flow.put(
                flow.leaf(
                        Role.PARAGRAPH,
                        setting.centred(middle, top + size * 1.2, Face.BOLD, size, label)));
    }
}
