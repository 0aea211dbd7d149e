package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Words;
import tamabako.problems.Story;

/// A word problem (ōyō keisan) as it stands on paper: its number, the story, and at the right,
/// beside the last line, a box for the answer.
///
/// @param labels the room for its number
/// @param width of all of it
record PrintedStory(
        Numbered problem,
        List<String> lines,
        AnswerBox box,
        double labels,
        double width,
        Setting setting) {

    private static final double LEADING = 1.55;
    private static final int FIRST_OF_EAST_ASIA = 0x2E80;

    PrintedStory {
        lines = List.copyOf(lines);
    }

    static PrintedStory of(
            Numbered numbered, AnswerBox box, double labels, double width, Setting setting) {
        Story story = (Story) numbered.problem().terms().told().orElseThrow();
        double size = size(setting);
        double room = width - labels - box.roomyWidth(size) - setting.pick(14, 18);
        String text = story.in(setting.words().language());
        List<String> lines = Lines.of(setting, Face.REGULAR, size, text, room);
        return new PrintedStory(numbered, lines, box, labels, width, setting);
    }

    double height() {
        double text = size() * (1 + (lines.size() - 1) * LEADING + 0.3);
        return Math.max(text, box.height());
    }

    /// Lays it as a row of a table.
    Element lay(Flow flow, double left, double top) {
        double first = top + size();
        double boxTop = top + height() - box.height();
        double boxWidth = box.roomyWidth(size());
        double boxLeft = left + width - boxWidth;
        flow.decorate(new Box(boxLeft, boxTop, boxWidth, box.height(), Ink.LINE));
        double inBox = boxTop + box.height() / 2 + size() * 0.38;
        return new Element.Group(
                Role.ROW,
                List.of(
                        flow.leaf(
                                Role.HEADS_ROW,
                                Labels.mark(problem.label(), left + labels, first, setting)),
                        flow.leaf(Role.CELL, text(left + labels, first)),
                        flow.leaf(Role.CELL, inside(boxLeft, boxWidth, inBox))));
    }

    /// The sign of the unit that is asked for, and that for a remainder.
    private List<Mark> inside(double left, double boxWidth, double baseline) {
        List<Mark> marks = new ArrayList<>();
        String sign = PrintedNumber.sign(problem.problem().terms().unit());
        if (!sign.isEmpty()) {
            marks.add(new Words(left + 5, baseline, Face.REGULAR, size(), Ink.SOFT, sign));
        }
        if (AnswerRule.leavesRemainder(problem.problem())) {
            marks.addAll(box.inside(left, boxWidth, baseline, size()));
        }
        return marks;
    }

    private List<Mark> text(double left, double first) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            double baseline = first + i * size() * LEADING;
            boolean blank = i + 1 < lines.size() && apart(lines.get(i), lines.get(i + 1));
            String line = lines.get(i) + (blank ? " " : "");
            marks.add(new Words(left, baseline, Face.REGULAR, size(), Ink.BLACK, line));
        }
        return marks;
    }

    /// Whether a blank stood between two lines: not so where one of the letters is Japanese.
    private static boolean apart(String line, String next) {
        return line.codePointBefore(line.length()) < FIRST_OF_EAST_ASIA
                && next.codePointAt(0) < FIRST_OF_EAST_ASIA;
    }

    private double size() {
        return size(setting);
    }

    private static double size(Setting setting) {
        return setting.pick(11, 18);
    }
}
