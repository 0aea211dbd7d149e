package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Words;
import tamabako.problems.Story;

/// Word problems (ōyō keisan): the story, and at its right, beside its last line, a box for the
/// answer.
final class StoryList implements Piece {

    private static final double LEADING = 1.55;
    private static final int FIRST_OF_EAST_ASIA = 0x2E80;

    private final List<Numbered> problems;
    private final List<List<String>> stories;
    private final AnswerBox box;
    private final double labels;
    private final Setting setting;

    StoryList(Section section, Setting setting) {
        this.problems = section.problems();
        this.box = AnswerBox.of(section, setting);
        this.setting = setting;
        this.labels = Labels.width(problems.stream().map(Numbered::label).toList(), setting);
        this.stories = problems.stream().map(this::lines).toList();
    }

    @Override
    public boolean hangsTogether() {
        return false;
    }

    @Override
    public double opening(double air) {
        return height(0);
    }

    @Override
    public void lay(Flow flow, double air) {
        List<Element> rows = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            flow.require(height(i));
            if (!flow.isTrial()) {
                rows.add(story(flow, i));
            }
            flow.down(height(i) + setting.pick(7, 10) + 16 * air);
        }
        flow.put(new Element.Group(Role.TABLE, rows));
    }

    private Element story(Flow flow, int place) {
        Numbered problem = problems.get(place);
        double first = flow.y() + size();
        double boxTop = flow.y() + height(place) - box.height();
        double boxLeft = setting.right() - boxWidth();
        flow.decorate(new Box(boxLeft, boxTop, boxWidth(), box.height(), Ink.LINE));
        double inBox = boxTop + box.height() / 2 + size() * 0.38;
        return new Element.Group(
                Role.ROW,
                List.of(
                        flow.leaf(
                                Role.HEADS_ROW,
                                Labels.mark(
                                        problem.label(), setting.left() + labels, first, setting)),
                        flow.leaf(Role.CELL, text(stories.get(place), first)),
                        flow.leaf(Role.CELL, inside(problem, boxLeft, inBox))));
    }

    /// The sign of the unit that is asked for, and that for a remainder.
    private List<Mark> inside(Numbered problem, double left, double baseline) {
        List<Mark> marks = new ArrayList<>();
        String sign = PrintedNumber.sign(problem.problem().terms().unit());
        if (!sign.isEmpty()) {
            marks.add(new Words(left + 5, baseline, Face.REGULAR, size(), Ink.SOFT, sign));
        }
        if (AnswerRule.leavesRemainder(problem.problem())) {
            marks.addAll(box.inside(left, boxWidth(), baseline, size()));
        }
        return marks;
    }

    private List<Mark> text(List<String> lines, double first) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            double baseline = first + i * size() * LEADING;
            boolean blank = i + 1 < lines.size() && apart(lines.get(i), lines.get(i + 1));
            String line = lines.get(i) + (blank ? " " : "");
            double left = setting.left() + labels;
            marks.add(new Words(left, baseline, Face.REGULAR, size(), Ink.BLACK, line));
        }
        return marks;
    }

    /// Whether a blank stood between two lines: not so where one of the letters is Japanese.
    private static boolean apart(String line, String next) {
        return line.codePointBefore(line.length()) < FIRST_OF_EAST_ASIA
                && next.codePointAt(0) < FIRST_OF_EAST_ASIA;
    }

    private List<String> lines(Numbered numbered) {
        Story story = (Story) numbered.problem().terms().told().orElseThrow();
        double width = setting.across() - labels - boxWidth() - setting.pick(14, 18);
        String text = story.in(setting.words().language());
        return Lines.of(setting, Face.REGULAR, size(), text, width);
    }

    private double height(int place) {
        double text = size() * (1 + (stories.get(place).size() - 1) * LEADING + 0.3);
        return Math.max(text, box.height());
    }

    private double boxWidth() {
        return box.roomyWidth(size());
    }

    private double size() {
        return setting.pick(11, 18);
    }
}
