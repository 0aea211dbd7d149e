package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// Columns (mitorizan) in blocks of five across, with row numbers at the left and a fine rule after
/// every fifth row to lead the eye.
final class ColumnBlocks implements Piece {

    static final int ROWS_BETWEEN_RULES = 5;
    static final double FINE = 0.4;

    private final List<PrintedColumn> columns;
    private final ColumnShape shape;
    private final Setting setting;

    ColumnBlocks(Section section, Setting setting) {
        this(section.problems().stream().map(PrintedColumn::of).toList(), setting);
    }

    private ColumnBlocks(List<PrintedColumn> columns, Setting setting) {
        this.columns = columns;
        this.shape = ColumnShape.of(columns, setting);
        this.setting = setting;
    }

    /// The columns for who calls them, with the answers.
    static ColumnBlocks called(Section section, Setting setting) {
        return new ColumnBlocks(
                section.problems().stream()
                        .map(each -> PrintedColumn.called(each, setting.words()))
                        .toList(),
                setting);
    }

    /// Blocks hang together in themselves; between two of them a page may turn.
    @Override
    public boolean hangsTogether() {
        return false;
    }

    @Override
    public double opening(double air) {
        return shape.form().height(PrintedColumn.mostRows(block(0)), air);
    }

    @Override
    public void lay(Flow flow, double air) {
        for (int first = 0; first < columns.size(); first += shape.across().count()) {
            List<PrintedColumn> block = block(first);
            int rows = PrintedColumn.mostRows(block);
            double fitting = Math.min(air, mostAir(block, rows, flow.roomOfPage()));
            double height = shape.form().height(rows, fitting);
            flow.require(height);
            if (!flow.isTrial()) {
                layBlock(flow, block, rows, fitting);
            }
            flow.down(height + setting.pick(12, 14) + 12 * fitting);
        }
    }

    /// How airy a block may be to fit on a page of its own, below the heading of its section.
    private double mostAir(List<PrintedColumn> block, int rows, double page) {
        double room = page - setting.pick(26, 38);
        double close = shape.form().height(rows, 0);
        if (close > room) {
            throw tooManyRows(block, rows, room);
        }
        return (room - close) / (shape.form().height(rows, 1) - close);
    }

    private void layBlock(Flow flow, List<PrintedColumn> block, int rows, double air) {
        for (int i = 0; i < block.size(); i++) {
            shape.lay(flow, block.get(i), i, rows, air);
        }
        double right = shape.left(block.size() - 1) + shape.across().width();
        for (int row = 1; row <= rows; row++) {
            if (row % ROWS_BETWEEN_RULES == 0 && row < rows) {
                double bottom = shape.form().bottom(flow.y(), row, air);
                flow.decorate(new Rule(setting.left(), bottom, right, bottom, FINE, Ink.HAIR));
            }
            if (rows > 1) {
                flow.decorate(rowNumber(row, shape.form().baseline(flow.y(), row, air)));
            }
        }
    }

    private Words rowNumber(int row, double baseline) {
        double right = setting.left() + ColumnShape.gutter(setting) - ColumnForm.SIDE - 2;
        double size = setting.pick(7, 11);
        return setting.endingAt(right, baseline, Face.REGULAR, size, Ink.SOFT, String.valueOf(row));
    }

    private List<PrintedColumn> block(int first) {
        return columns.subList(first, Math.min(columns.size(), first + shape.across().count()));
    }

    private Unprintable tooManyRows(List<PrintedColumn> block, int rows, double room) {
        PrintedColumn longest =
                block.stream().filter(each -> each.rows().size() == rows).findFirst().orElseThrow();
        return new Unprintable(
                new Reason.TooManyRows(longest.label(), rows, shape.form().rowsIn(room), setting.size()));
    }
}
