package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;

/// Products, quotients or roots in two lists side by side, numbered downward, signs under signs,
/// each with an answer box.
final class ExpressionLists implements Piece {

    private static final int FEWEST_LINES = 3;

    private final List<Expression> expressions;
    private final ExpressionLine line;
    private final Setting setting;

    ExpressionLists(Section section, Setting setting) {
        this.expressions = section.problems().stream().map(Expression::of).toList();
        this.line = ExpressionLine.of(section, expressions, setting);
        this.setting = setting;
    }

    @Override
    public boolean hangsTogether() {
        return true;
    }

    @Override
    public double opening(double air) {
        return Math.min(FEWEST_LINES, lines(expressions)) * line.pitch(air);
    }

    @Override
    public void lay(Flow flow, double air) {
        double pitch = line.pitch(air);
        List<Expression> rest = expressions;
        while (!rest.isEmpty()) {
            int needed = lines(rest);
            flow.require(Math.min(FEWEST_LINES, needed) * pitch);
            int lines = onThisPage(needed, (int) (flow.room() / pitch));
            int taken = Math.min(rest.size(), lines * line.across().count());
            layLists(flow, rest.subList(0, taken), lines, pitch);
            flow.down(lines * pitch);
            rest = rest.subList(taken, rest.size());
        }
        flow.down(setting.pick(8, 10));
    }

    /// How many of the `needed` lines go on this page: as many as fit, but not so many that a
    /// single one is left for the next.
    private static int onThisPage(int needed, int fitting) {
        return needed - fitting == 1 && fitting > FEWEST_LINES
                ? fitting - 1
                : Math.min(needed, fitting);
    }

    private void layLists(Flow flow, List<Expression> some, int lines, double pitch) {
        for (int list = 0; list * lines < some.size(); list++) {
            int first = list * lines;
            List<Element> rows = new ArrayList<>();
            for (int i = first; i < Math.min(some.size(), first + lines); i++) {
                rows.add(line.lay(flow, some.get(i), list, flow.y() + (i - first) * pitch));
            }
            flow.put(new Element.Group(Role.TABLE, rows));
        }
    }

    private int lines(List<Expression> some) {
        return Math.ceilDiv(some.size(), line.across().count());
    }
}
