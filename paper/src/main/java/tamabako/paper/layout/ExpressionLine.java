package tamabako.paper.layout;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import tamabako.paper.layout.Expression.Widths;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// How a line of a list is laid: number, expression, and the answer box beside it, or below it
/// where the numbers are so long that it has no room beside.
///
/// @param labels the room of the numbers of the problems, in points
/// @param below whether the box stands below
record ExpressionLine(
        Widths widths,
        AnswerBox box,
        double labels,
        Across across,
        boolean below,
        Setting setting) {

    private static final int MOST_ACROSS = 2;
    private static final double STEP = 0.25;

    /// The digits reach so far above their baseline, in parts of their size; half of it is below
    /// the middle.
    private static final double HALF_DIGIT = 0.38;

    /// The lines of a section.
    ///
    /// @throws Unprintable if an expression is longer than a line
    static ExpressionLine of(Section section, List<Expression> expressions, Setting setting) {
        Widths widths = Widths.of(expressions);
        AnswerBox box = AnswerBox.of(section, setting);
        double labels = labels(expressions, setting);
        Optional<ExpressionLine> beside =
                fit(
                                MOST_ACROSS,
                                setting,
                                width -> besideFigures(width - labels, widths, box, setting))
                        .map(across ->
                                new ExpressionLine(widths, box, labels, across, false, setting));
        return beside.or(() ->
                        fit(1, setting, width -> belowFigures(width - labels, widths, box, setting))
                                .map(across ->
                                        new ExpressionLine(
                                                widths, box, labels, across, true, setting)))
                .orElseThrow(() -> tooWide(expressions, setting));
    }

    /// The height of a line with the clear room below it.
    double pitch(double air) {
        double above = below ? expressionHeight() : 0;
        return above + box.height() + setting.pick(4, 6) + 16 * air;
    }

    /// Lays `expression` in the list of that number, from 0, with its top at `top`.
    Element lay(Flow flow, Expression expression, int list, double top) {
        double figures = across.figures();
        double left = setting.left() + list * (across.width() + gap(setting));
        double start = left + labels + indent();
        double boxTop = below ? top + expressionHeight() : top;
        double boxLeft = below ? start : start + figures * widths.whole();
        double boxWidth = Math.min(box.roomyWidth(figures), left + across.width() - boxLeft);
        double boxLine = boxTop + box.height() / 2 + HALF_DIGIT * figures;
        double baseline = below ? top + figures : boxLine;
        flow.decorate(new Box(boxLeft, boxTop, boxWidth, box.height(), Ink.LINE));
        return new Element.Group(
                Role.ROW,
                List.of(
                        flow.leaf(
                                Role.HEADS_ROW,
                                number(expression.label(), left + labels, baseline)),
                        flow.leaf(Role.CELL, expression.marks(widths, start, baseline, figures)),
                        flow.leaf(Role.CELL, box.inside(boxLeft, boxWidth, boxLine, figures))));
    }

    /// What room is left over sets the expression further from its number.
    private double indent() {
        double figures = across.figures();
        double beside = below ? 0 : box.width(figures);
        double left = across.width() - labels - figures * widths.whole() - beside;
        return Math.clamp(left, 0, setting.pick(7, 8));
    }

    private Words number(String label, double end, double baseline) {
        double right = end - clear(setting);
        return setting.endingAt(right, baseline, Face.BOLD, size(setting), Ink.BLACK, label);
    }

    private double expressionHeight() {
        return across.figures() * 1.5;
    }

    private static Optional<Across> fit(
            int most, Setting setting, ToDoubleFunction<Double> figuresFor) {
        return Across.fit(most, setting.across(), gap(setting), setting.size(), figuresFor);
    }

    /// The largest size of figures that leaves room for the answer beside, 0 if there is none.
    private static double besideFigures(
            double room, Widths widths, AnswerBox box, Setting setting) {
        double figures = setting.size().mostFigures();
        while (figures > 0 && figures * widths.whole() + box.width(figures) > room) {
            figures -= STEP;
        }
        return figures;
    }

    private static double belowFigures(double room, Widths widths, AnswerBox box, Setting setting) {
        double figures = setting.size().mostFigures();
        while (figures > 0 && Math.max(figures * widths.whole(), box.width(figures)) > room) {
            figures -= STEP;
        }
        return figures;
    }

    private static double labels(List<Expression> expressions, Setting setting) {
        double widest =
                expressions.stream()
                        .mapToDouble(each -> setting.width(Face.BOLD, size(setting), each.label()))
                        .max()
                        .orElseThrow();
        return Math.max(widest, setting.pick(14, 24)) + clear(setting);
    }

    private static double size(Setting setting) {
        return setting.pick(9, 18);
    }

    /// Between a number and its problem.
    private static double clear(Setting setting) {
        return setting.pick(6, 10);
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
