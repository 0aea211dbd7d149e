package tamabako.paper.layout;

import java.util.Optional;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.wish.Unprintable.Reason;

/// A column among problems of other kinds.
///
/// @param number what stands in its bead
record ColumnCell(String number, PrintedColumn column, Setting setting) implements MixedCell {

    @Override
    public String label() {
        return column.label();
    }

    @Override
    public String told() {
        return column.longestRow().figures();
    }

    @Override
    public double width(double figures) {
        double rows = figures * (column.whole() + column.decimals()) + 2 * ColumnForm.SIDE;
        return Math.max(rows, AnswerBox.least(setting));
    }

    @Override
    public double height(double figures, double air) {
        return form(0, figures).height(column.rows().size(), air);
    }

    @Override
    public Optional<Reason> tooHigh(double figures, double height) {
        int rows = column.rows().size();
        int most = form(0, figures).rowsIn(height);
        return rows <= most
                ? Optional.empty()
                : Optional.of(new Reason.TooManyRows(label(), rows, most, setting.size()));
    }

    @Override
    public void lay(Flow flow, Room at, double figures, double air) {
        ColumnForm form = form(at.width(), figures);
        form.lay(flow, number, column, at.left(), at.top(), at.height(), air);
        double right = at.left() + at.width();
        int rows = column.rows().size();
        for (int row = ColumnBlocks.ROWS_BETWEEN_RULES;
                row < rows;
                row += ColumnBlocks.ROWS_BETWEEN_RULES) {
            double y = form.bottom(at.top(), row, air);
            flow.decorate(new Rule(at.left(), y, right, y, ColumnBlocks.FINE, Ink.HAIR));
        }
    }

    private ColumnForm form(double width, double figures) {
        double widest = column.whole() + column.decimals();
        return new ColumnForm(width, figures, column.decimals(), widest, 0, setting);
    }
}
