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
        return height(blocks().getFirst(), 0);
    }

    /// As many blocks go on each page as fit at their closest; these are then as airy as they may
    /// be on it, so that air leaves no page half empty.
    @Override
    public void lay(Flow flow, double air) {
        List<List<PrintedColumn>> blocks = blocks();
        blocks.forEach(block -> checkRows(block, flow.roomOfPage() - setting.pick(26, 38)));
        int next = 0;
        while (next < blocks.size()) {
            flow.require(height(blocks.get(next), 0));
            int end = next + fitting(blocks.subList(next, blocks.size()), flow.room());
            layPage(flow, blocks.subList(next, end), air);
            next = end;
        }
    }

    private void layPage(Flow flow, List<List<PrintedColumn>> blocks, double air) {
        double fitting =
                Layout.AIRS.stream()
                        .filter(each -> each <= air && heightOfAll(blocks, each) <= flow.room())
                        .findFirst()
                        .orElse(0.0);
        for (List<PrintedColumn> block : blocks) {
            if (!flow.isTrial()) {
                layBlock(flow, block, PrintedColumn.mostRows(block), fitting);
            }
            flow.down(height(block, fitting) + below(fitting));
        }
    }

    private int fitting(List<List<PrintedColumn>> blocks, double room) {
        int fitting = 1;
        while (fitting < blocks.size() && heightOfAll(blocks.subList(0, fitting + 1), 0) <= room) {
            fitting++;
        }
        return fitting;
    }

    /// The height of blocks one below the other, without the clear room below the last.
    private double heightOfAll(List<List<PrintedColumn>> blocks, double air) {
        double heights = blocks.stream().mapToDouble(block -> height(block, air)).sum();
        return heights + (blocks.size() - 1) * below(air);
    }

    private double height(List<PrintedColumn> block, double air) {
        return shape.form().height(PrintedColumn.mostRows(block), air);
    }

    private double below(double air) {
        return ColumnShape.below(setting) + 12 * air;
    }

    /// @param room the room of a page below the heading of a section
    private void checkRows(List<PrintedColumn> block, double room) {
        if (height(block, 0) > room) {
            int rows = PrintedColumn.mostRows(block);
            PrintedColumn longest =
                    block.stream()
                            .filter(each -> each.rows().size() == rows)
                            .findFirst()
                            .orElseThrow();
            int most = shape.form().rowsIn(room);
            throw new Unprintable(
                    new Reason.TooManyRows(longest.label(), rows, most, setting.size()));
        }
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

    private List<List<PrintedColumn>> blocks() {
        return shape.blocks(columns);
    }
}
