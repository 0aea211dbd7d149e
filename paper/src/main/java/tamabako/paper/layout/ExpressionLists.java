package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// Products, quotients or roots in two lists side by side, numbered downward, signs under signs,
/// each with an answer box.
final class ExpressionLists implements Piece {

    private static final int MOST_ACROSS = 2;
    private static final int FEWEST_LINES = 3;
    private static final double STEP = 0.25;

    private final List<Expression> expressions;
    private final AnswerBox box;
    private final Setting setting;
    private final Across across;

    ExpressionLists(Section section, Setting setting) {
        this.expressions = section.problems().stream().map(Expression::of).toList();
        this.box = AnswerBox.of(section, setting);
        this.setting = setting;
        this.across =
                Across.fit(
                                MOST_ACROSS,
                                Page.across(),
                                gap(),
                                setting.size(),
                                width -> figuresFor(width))
                        .orElseThrow(this::tooWide);
    }

    @Override
    public boolean hangsTogether() {
        return true;
    }

    @Override
    public double opening(double air) {
        int lines = Math.ceilDiv(expressions.size(), across.count());
        return Math.min(FEWEST_LINES, lines) * pitch(air);
    }

    @Override
    public void lay(Flow flow, double air) {
        int next = 0;
        while (next < expressions.size()) {
            List<Expression> rest = expressions.subList(next, expressions.size());
            int needed = Math.ceilDiv(rest.size(), across.count());
            flow.require(Math.min(FEWEST_LINES, needed) * pitch(air));
            int lines = lines(needed, (int) (flow.room() / pitch(air)));
            int taken = Math.min(rest.size(), lines * across.count());
            layLists(flow, rest.subList(0, taken), lines, air);
            flow.down(lines * pitch(air));
            next += taken;
        }
        flow.down(setting.pick(8, 10));
    }

    /// How many of the `needed` lines go on this page: as many as fit, but not so many that a
    /// single one is left for the next.
    private static int lines(int needed, int fitting) {
        return needed - fitting == 1 && fitting > FEWEST_LINES
                ? fitting - 1
                : Math.min(needed, fitting);
    }

    private void layLists(Flow flow, List<Expression> some, int lines, double air) {
        for (int list = 0; list * lines < some.size(); list++) {
            int first = list * lines;
            double left = Page.LEFT + list * (across.width() + gap());
            List<Element> rows = new ArrayList<>();
            for (int i = first; i < Math.min(some.size(), first + lines); i++) {
                rows.add(line(flow, some.get(i), left, flow.y() + (i - first) * pitch(air)));
            }
            flow.put(new Element.Group(Role.TABLE, rows));
        }
    }

    private Element line(Flow flow, Expression expression, double left, double top) {
        double figures = across.figures();
        double baseline = top + box.height() / 2 + 0.38 * figures;
        double start = left + labelWidth();
        double boxLeft = start + figures * Expression.width(expressions);
        double boxWidth = Math.min(box.roomyWidth(figures), left + across.width() - boxLeft);
        flow.decorate(new Box(boxLeft, top, boxWidth, box.height(), Ink.LINE));
        List<Mark> problem = expression.marks(expressions, start, baseline, figures);
        List<Mark> inside = box.inside(boxLeft, boxWidth, baseline, figures);
        return new Element.Group(
                Role.ROW,
                List.of(
                        flow.leaf(Role.HEADS_ROW, number(expression.label(), left, baseline)),
                        flow.leaf(Role.CELL, problem.toArray(Mark[]::new)),
                        flow.leaf(Role.CELL, inside.toArray(Mark[]::new))));
    }

    private Words number(String label, double left, double baseline) {
        double right = left + labelWidth() - setting.pick(6, 10);
        return setting.endingAt(right, baseline, Face.BOLD, labelSize(), Ink.BLACK, label);
    }

    private double labelSize() {
        return setting.pick(9, 18);
    }

    private double labelWidth() {
        double widest =
                expressions.stream()
                        .mapToDouble(each -> setting.width(Face.BOLD, labelSize(), each.label()))
                        .max()
                        .orElseThrow();
        return Math.max(widest, setting.pick(14, 24)) + setting.pick(6, 10);
    }

    private double gap() {
        return setting.pick(14, 20);
    }

    private double pitch(double air) {
        return box.height() + setting.pick(4, 6) + 16 * air;
    }

    /// The largest size of figures that leaves room for the answer, 0 if there is none.
    private double figuresFor(double width) {
        double room = width - labelWidth();
        double figures = setting.size().mostFigures();
        while (figures > 0 && figures * Expression.width(expressions) + box.width(figures) > room) {
            figures -= STEP;
        }
        return Math.max(0, figures);
    }

    private Unprintable tooWide() {
        Expression longest =
                expressions.stream()
                        .max(
                                Comparator.comparingDouble(
                                        each -> each.firstWidth() + each.secondWidth()))
                        .orElseThrow();
        return new Unprintable(new Reason.TooWide(longest.label(), longest.told(), setting.size()));
    }
}
