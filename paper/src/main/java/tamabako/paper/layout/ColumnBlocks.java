package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.Cells;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.layout.Mark.Bead;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Figures;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// Columns (mitorizan) in blocks of five across: the number in a bead, the rows with units under
/// units, an answer box below, a fine rule after every fifth row to lead the eye.
final class ColumnBlocks implements Piece {

    private static final int MOST_ACROSS = 5;
    private static final int ROWS_BETWEEN_RULES = 5;
    private static final double SIDE = 3;

    private final List<PrintedColumn> columns;
    private final Setting setting;
    private final double decimals;
    private final double widest;
    private final Across across;

    ColumnBlocks(Section section, Setting setting) {
        this.columns = section.problems().stream().map(PrintedColumn::of).toList();
        this.setting = setting;
        this.decimals = columns.stream().mapToDouble(PrintedColumn::decimals).max().orElseThrow();
        double whole = columns.stream().mapToDouble(PrintedColumn::whole).max().orElseThrow();
        this.widest = whole + decimals;
        this.across =
                Across.fit(
                                MOST_ACROSS,
                                Page.across() - gutter(),
                                gap(),
                                setting.size(),
                                width -> (width - 2 * SIDE) / widest)
                        .orElseThrow(this::tooWide);
    }

    /// Blocks hang together in themselves; between two of them a page may turn.
    @Override
    public boolean hangsTogether() {
        return false;
    }

    @Override
    public double opening(double air) {
        return height(block(0), air);
    }

    @Override
    public void lay(Flow flow, double air) {
        for (int first = 0; first < columns.size(); first += across.count()) {
            List<PrintedColumn> block = block(first);
            double fitting = Math.min(air, mostAir(block, flow.roomOfPage()));
            double height = height(block, fitting);
            flow.require(height);
            layBlock(flow, block, fitting);
            flow.down(height + setting.pick(12, 14) + 12 * fitting);
        }
    }

    /// How airy a block may be to fit on a page of its own.
    private double mostAir(List<PrintedColumn> block, double room) {
        double close = height(block, 0);
        if (close > room) {
            throw tooManyRows(block, room);
        }
        return (room - close) / (height(block, 1) - close);
    }

    private void layBlock(Flow flow, List<PrintedColumn> block, double air) {
        int rows = rows(block);
        for (int i = 0; i < block.size(); i++) {
            layColumn(flow, block.get(i), left(i), rows, air);
        }
        double right = left(block.size() - 1) + across.width();
        double top = flow.y() + bead();
        for (int row = 1; row <= rows; row++) {
            double bottom = top + row * pitch(air);
            if (row % ROWS_BETWEEN_RULES == 0 && row < rows) {
                flow.decorate(new Rule(Page.LEFT, bottom, right, bottom, 0.4, Ink.HAIR));
            }
            flow.decorate(rowNumber(row, baseline(bottom, air)));
        }
    }

    private Words rowNumber(int row, double baseline) {
        double size = setting.pick(7, 11);
        return setting.endingAt(
                Page.LEFT + gutter() - SIDE - 2,
                baseline,
                Face.REGULAR,
                size,
                Ink.SOFT,
                String.valueOf(row));
    }

    private void layColumn(Flow flow, PrintedColumn column, double left, int rows, double air) {
        double top = flow.y() + bead();
        double unit = left + (across.width() + across.figures() * (widest - 2 * decimals)) / 2;
        List<Element> cells = new ArrayList<>();
        cells.add(row(flow.leaf(Role.HEADS_COLUMN, number(flow, column.label(), left))));
        for (int i = 0; i < column.rows().size(); i++) {
            PrintedNumber number = column.rows().get(i);
            double x = unit - across.figures() * Cells.width(number.whole());
            double baseline = baseline(top + (i + 1) * pitch(air), air);
            cells.add(
                    row(
                            flow.leaf(
                                    Role.CELL,
                                    new Figures(x, baseline, across.figures(), number.figures()))));
        }
        cells.add(row(flow.leaf(Role.CELL)));
        flow.put(new Element.Group(Role.TABLE, cells));
        flow.decorate(
                new Box(
                        left,
                        top + rows * pitch(air) + SIDE,
                        across.width(),
                        setting.size().box(),
                        Ink.LINE));
    }

    private Mark number(Flow flow, String label, double left) {
        String text = setting.words().say("problem", label);
        double size = Math.min(labelSize(), across.width() / setting.width(Face.BOLD, 1, text));
        double middle = left + across.width() / 2;
        double width = Math.min(across.width(), setting.width(Face.BOLD, size, text) + size * 2);
        flow.decorate(new Bead(middle - width / 2, flow.y(), width, size * 1.5, Ink.LINE));
        return setting.centred(middle, flow.y() + size * 1.08, Face.BOLD, size, text);
    }

    private static Element row(Element cell) {
        return new Element.Group(Role.ROW, List.of(cell));
    }

    private double left(int place) {
        return Page.LEFT + gutter() + place * (across.width() + gap());
    }

    private double labelSize() {
        return setting.pick(9, 14);
    }

    private double gutter() {
        return setting.pick(16, 24);
    }

    private double gap() {
        return setting.pick(8, 12);
    }

    private double bead() {
        return labelSize() * 1.5 + 3;
    }

    private double pitch(double air) {
        return across.figures() * (1.3 + 0.45 * air);
    }

    /// Figures stand in the middle of their row: the room above and below is the same.
    private double baseline(double bottom, double air) {
        return bottom - (pitch(air) - 0.8 * across.figures()) / 2;
    }

    private List<PrintedColumn> block(int first) {
        return columns.subList(first, Math.min(columns.size(), first + across.count()));
    }

    private static int rows(List<PrintedColumn> block) {
        return block.stream().mapToInt(column -> column.rows().size()).max().orElseThrow();
    }

    private double height(List<PrintedColumn> block, double air) {
        return bead() + rows(block) * pitch(air) + SIDE + setting.size().box();
    }

    private Unprintable tooWide() {
        PrintedColumn longest = PrintedColumn.longest(columns);
        return new Unprintable(
                new Reason.TooWide(
                        longest.label(), longest.longestRow().figures(), setting.size()));
    }

    private Unprintable tooManyRows(List<PrintedColumn> block, double room) {
        PrintedColumn longest =
                block.stream()
                        .filter(each -> each.rows().size() == rows(block))
                        .findFirst()
                        .orElseThrow();
        double without = room - bead() - SIDE - setting.size().box();
        return new Unprintable(
                new Reason.TooManyRows(
                        longest.label(),
                        longest.rows().size(),
                        (int) (without / pitch(0)),
                        setting.size()));
    }
}
