package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;

/// The head of a paper: its grade, what is to be known of it in some lines, and boxes to be filled
/// in.
///
/// @param lines what is said below the title
/// @param boxes the boxes to be filled in, from the left
record PaperHead(Title title, List<String> lines, List<Boxed> boxes, Setting setting)
        implements Head {

    PaperHead {
        lines = List.copyOf(lines);
        boxes = List.copyOf(boxes);
    }

    /// A box to be filled in.
    ///
    /// @param caption what belongs into it
    /// @param filled what stands in it already
    /// @param after what stands at its end
    /// @param share the part of the width of the page
    record Boxed(String caption, String filled, String after, double share) {}

    @Override
    public void lay(Flow flow) {
        title.lay(flow);
        double size = setting.size().words();
        for (String text : lines) {
            for (String line : Lines.of(setting, Face.REGULAR, size, text, setting.across())) {
                flow.down(size * 1.5);
                flow.put(flow.leaf(Role.PARAGRAPH, words(flow, size, line)));
            }
        }
        flow.down(setting.pick(8, 12));
        if (!boxes.isEmpty()) {
            layBoxes(flow);
        }
        flow.down(setting.pick(12, 16));
    }

    @Override
    public List<Mark> later(String section) {
        return title.later(section, "");
    }

    @Override
    public double laterHeight() {
        return title.laterHeight();
    }

    private Words words(Flow flow, double size, String line) {
        return new Words(setting.left(), flow.y(), Face.REGULAR, size, Ink.BLACK, line);
    }

    /// On one line, or in large print on as many as their shares fill.
    private void layBoxes(Flow flow) {
        double height = setting.pick(26, 38);
        double left = setting.left();
        for (Boxed box : boxes) {
            if (left + box.share() * setting.across() > setting.right() + 1) {
                flow.down(height);
                left = setting.left();
            }
            double width = box.share() * setting.across();
            flow.decorate(new Box(left, flow.y(), width, height, Ink.LINE));
            layBox(flow, box, left, width, height);
            left += width;
        }
        flow.down(height);
    }

    private void layBox(Flow flow, Boxed box, double left, double width, double height) {
        double size = setting.size().words();
        double small = setting.pick(9, 18);
        double baseline = flow.y() + height / 2 + small * 0.36;
        double room = setting.width(Face.REGULAR, small, box.caption()) + 2 * small;
        double line = left + room;
        flow.decorate(new Rule(line, flow.y(), line, flow.y() + height, 0.5, Ink.HAIR));
        List<Mark> marks = new ArrayList<>();
        marks.add(setting.centred(left + room / 2, baseline, Face.REGULAR, small, box.caption()));
        if (!box.filled().isEmpty()) {
            double free = width - room - size;
            String shown = Lines.of(setting, Face.REGULAR, size, box.filled(), free, 1).getFirst();
            double x = line + size / 2;
            marks.add(new Words(x, baseline, Face.REGULAR, size, Ink.BLACK, shown));
        }
        if (!box.after().isEmpty()) {
            double end = left + width - size * 0.6;
            marks.add(setting.endingAt(end, baseline, Face.REGULAR, size, Ink.BLACK, box.after()));
        }
        flow.put(flow.leaf(Role.PARAGRAPH, marks));
    }
}
