package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;

/// What stands over a section of a marking sheet: its name, and at the right boxes for how many
/// answers are right and how many points these are.
///
/// @param points for a right answer; 0 where only a sum of points is to be written
/// @param full the most points
record MarkingHead(String heading, int points, int full, Setting setting) implements Block.Over {

    private static final double SIZE = 10;
    private static final double BOX = 15;
    private static final double CLEAR = 4;

    @Override
    public void lay(Flow flow) {
        double baseline = flow.y() + BOX * 0.7;
        flow.put(
                flow.leaf(
                        Role.HEADING,
                        new Words(setting.left(), baseline, Face.BOLD, SIZE, Ink.BLACK, heading)));
        List<Mark> marks = new ArrayList<>();
        double right = after(marks, setting.right(), baseline, "score.of", full);
        right = box(flow, right, 46);
        if (points > 0) {
            right = after(marks, right - CLEAR, baseline, "marking.times", points);
            right = box(flow, right, 34);
            after(marks, right - CLEAR, baseline, "marking.right", points);
        }
        flow.put(flow.leaf(Role.PARAGRAPH, marks.reversed()));
        flow.down(BOX + 2);
        flow.decorate(new Rule(setting.left(), flow.y(), setting.right(), flow.y(), 0.6, Ink.LINE));
        flow.down(4);
    }

    @Override
    public double height() {
        return BOX + 6;
    }

    private double after(List<Mark> marks, double right, double baseline, String key, int number) {
        String text = setting.words().say(key, number);
        marks.add(setting.endingAt(right, baseline, Face.REGULAR, SIZE, Ink.BLACK, text));
        return right - setting.width(Face.REGULAR, SIZE, text) - CLEAR;
    }

    private double box(Flow flow, double right, double width) {
        flow.decorate(new Box(right - width, flow.y(), width, BOX, Ink.LINE));
        return right - width;
    }
}
