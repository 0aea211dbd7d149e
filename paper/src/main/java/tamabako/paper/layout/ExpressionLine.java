package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tamabako.paper.layout.Expression.Widths;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// How a line of a list is laid: number, expression, and the answer box beside it, or below it
/// where the numbers are so long that it has no room beside.
///
/// @param labels the room of the numbers of the problems, in points
/// @param below whether the box stands below
/// @param answers what stands in the boxes; empty for the pupil
record ExpressionLine(
        List<Expression> expressions,
        List<PrintedAnswer> answers,
        Widths widths,
        AnswerBox box,
        double labels,
        Across fitted,
        boolean below,
        Setting setting)
        implements ListLine {

    private static final double STEP = 0.25;

    /// The digits reach so far above their baseline, in parts of their size; half of it is below
    /// the middle.
    private static final double HALF_DIGIT = 0.38;

    /// The lines of a section: two lists with the box beside, if need be closer together or with
    /// the box below; else one list.
    ///
    /// @throws Unprintable if an expression is longer than a line
    static ExpressionLine of(Section section, Setting setting) {
        List<Expression> expressions = section.problems().stream().map(Expression::of).toList();
        Widths widths = Widths.of(expressions);
        AnswerBox box = AnswerBox.of(section, setting);
        double labels = Labels.width(expressions.stream().map(Expression::label).toList(), setting);
        Across none = new Across(0, 0, 0);
        ExpressionLine wide =
                new ExpressionLine(
                        expressions, List.of(), widths, box, labels, none, false, setting);
        ExpressionLine close = wide.closer(widths.closer(), false);
        ExpressionLine below = wide.closer(widths, true);
        return wide.fit(2)
                .or(() -> close.fit(2))
                .or(() -> below.fit(2))
                .or(() -> wide.fit(1))
                .or(() -> below.fit(1))
                .orElseThrow(() -> tooWide(expressions, setting));
    }

    private ExpressionLine closer(Widths changed, boolean boxBelow) {
        return new ExpressionLine(
                expressions, answers, changed, box, labels, fitted, boxBelow, setting);
    }

    /// The same with just so many lists side by side, if they have room.
    private Optional<ExpressionLine> fit(int lists) {
        return Across.fit(lists, setting.across(), gap(setting), setting.size(), this::figuresFor)
                .filter(found -> found.count() == lists)
                .map(found ->
                        new ExpressionLine(
                                expressions, answers, widths, box, labels, found, below, setting));
    }

    /// The largest size of figures that a width has room for, 0 if there is none.
    private double figuresFor(double width) {
        double room = width - labels;
        double figures = setting.size().mostFigures();
        while (figures > 0 && taken(figures) > room) {
            figures -= STEP;
        }
        return figures;
    }

    private double taken(double figures) {
        double expression = figures * widths.whole();
        double answer = box.width(figures);
        return below ? Math.max(expression, answer) : expression + answer;
    }

    /// The same with the answers in their boxes, for who calls them.
    ExpressionLine answered(Section section) {
        List<PrintedAnswer> told = section.problems().stream().map(PrintedAnswer::of).toList();
        return new ExpressionLine(expressions, told, widths, box, labels, fitted, below, setting);
    }

    @Override
    public int across() {
        return fitted.count();
    }

    @Override
    public double pitch(double air) {
        double above = below ? expressionHeight() : 0;
        return above + box.height() + setting.pick(4, 6) + 16 * air;
    }

    @Override
    public Element lay(Flow flow, int index, int list, double top) {
        Expression expression = expressions.get(index);
        double figures = fitted.figures();
        double left = setting.left() + list * (fitted.width() + gap(setting));
        double start = left + labels + indent();
        double boxTop = below ? top + expressionHeight() : top;
        double boxLeft = below ? start : start + figures * widths.whole();
        double boxWidth = Math.min(box.roomyWidth(figures), left + fitted.width() - boxLeft);
        double boxLine = boxTop + box.height() / 2 + HALF_DIGIT * figures;
        double baseline = below ? top + figures : boxLine;
        flow.decorate(new Box(boxLeft, boxTop, boxWidth, box.height(), Ink.LINE));
        return new Element.Group(
                Role.ROW,
                List.of(
                        flow.leaf(
                                Role.HEADS_ROW,
                                Labels.mark(expression.label(), left + labels, baseline, setting)),
                        flow.leaf(Role.CELL, expression.marks(widths, start, baseline, figures)),
                        flow.leaf(Role.CELL, inside(index, boxLeft, boxWidth, boxLine))));
    }

    private List<Mark> inside(int index, double left, double width, double baseline) {
        List<Mark> marks = new ArrayList<>(box.inside(left, width, baseline, fitted.figures()));
        if (!answers.isEmpty()) {
            marks.addAll(box.filled(answers.get(index), left, width, baseline, fitted.figures()));
        }
        return marks;
    }

    /// What room is left over sets the expression further from its number.
    private double indent() {
        double figures = fitted.figures();
        double beside = below ? 0 : box.width(figures);
        double left = fitted.width() - labels - figures * widths.whole() - beside;
        return Math.clamp(left, 0, setting.pick(7, 8));
    }

    private double expressionHeight() {
        return fitted.figures() * 1.5;
    }

    /// Between two lists.
    private static double gap(Setting setting) {
        return setting.pick(14, 20);
    }

    private static Unprintable tooWide(List<Expression> expressions, Setting setting) {
        Expression longest =
                expressions.stream()
                        .max(
                                Comparator.comparingDouble(
                                        each -> each.firstWidth() + each.secondWidth()))
                        .orElseThrow();
        return new Unprintable(new Reason.TooWide(longest.label(), longest.told(), setting.size()));
    }
}
