package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.layout.Mark.Box;

/// Lines of a marking sheet: number, right answer, a box to tick.
///
/// @param figures the size of the figures
/// @param lists how many lists stand side by side
record TickLine(
        List<PrintedAnswer> answers,
        AnswerFigures shape,
        double figures,
        int lists,
        Setting setting)
        implements ListLine {

    private static final int MOST_ACROSS = 6;
    private static final double GAP = 9;
    private static final double CLEAR = 4;

    /// Between a number and its answer, so that the two are not read as one.
    private static final double APART = 9;

    /// Lines with figures of that size, as many lists as fit.
    static TickLine of(Section section, double figures, Setting setting) {
        List<PrintedAnswer> answers = section.problems().stream().map(PrintedAnswer::of).toList();
        AnswerFigures shape = AnswerFigures.of(answers, figures * 0.8, setting);
        double needed = new TickLine(answers, shape, figures, 1, setting).needed();
        int lists = (int) ((setting.across() + GAP) / (needed + GAP));
        return new TickLine(answers, shape, figures, Math.clamp(lists, 1, MOST_ACROSS), setting);
    }

    @Override
    public int across() {
        return lists;
    }

    @Override
    public double pitch(double air) {
        return figures * (1.3 + 0.6 * air);
    }

    /// The height of all lines at their closest.
    double height() {
        return Math.ceilDiv(answers.size(), lists) * pitch(0);
    }

    @Override
    public Element lay(Flow flow, int index, int list, double top) {
        PrintedAnswer answer = answers.get(index);
        double width = (setting.across() - (lists - 1) * GAP) / lists;
        double left = setting.left() + list * (width + GAP);
        double baseline = top + figures;
        double box = boxSize();
        double start = left + labels() + APART;
        flow.decorate(
                new Box(
                        start + shape.width(figures) + CLEAR,
                        baseline - figures * 0.4 - box / 2,
                        box,
                        box,
                        Ink.LINE));
        Mark number =
                setting.endingAt(
                        left + labels(),
                        baseline,
                        Face.BOLD,
                        labelSize(),
                        Ink.BLACK,
                        answer.label());
        return new Element.Group(
                Role.ROW,
                List.of(
                        flow.leaf(Role.HEADS_ROW, number),
                        flow.leaf(Role.CELL, shape.marks(answer, start, baseline, figures)),
                        flow.leaf(Role.CELL)));
    }

    private double needed() {
        return labels() + APART + shape.width(figures) + CLEAR + boxSize();
    }

    private double boxSize() {
        return figures * 1.05;
    }

    private double labels() {
        return answers.stream()
                .mapToDouble(each -> setting.width(Face.BOLD, labelSize(), each.label()))
                .max()
                .orElseThrow();
    }

    private double labelSize() {
        return figures * 0.8;
    }
}
