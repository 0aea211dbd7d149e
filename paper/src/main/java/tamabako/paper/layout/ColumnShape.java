package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.Cells;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.layout.Mark.Bead;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Figures;
import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// How the columns of a section are laid: the number in a bead, the rows with units under units, an
/// answer box below.
///
/// @param decimals the widest decimals, in parts of the size of the figures
/// @param widest the widest room of a number, in parts of the size of the figures
/// @param cues the room for what the caller says before a row, in points; 0 for the pupil
record ColumnShape(Across across, double decimals, double widest, double cues, Setting setting) {

    private static final int MOST_ACROSS = 5;

    /// Clear room at the sides of numbers and above the answer box.
    static final double SIDE = 3;

    private static final double CLOSE = 1.3;
    private static final double AIRY = 0.45;

    /// The digits are so high, in parts of their size.
    private static final double DIGIT = 0.8;

    /// The shape that all `columns` fit.
    ///
    /// @throws Unprintable if a row is longer than a line
    static ColumnShape of(List<PrintedColumn> columns, Setting setting) {
        double decimals = columns.stream().mapToDouble(PrintedColumn::decimals).max().orElseThrow();
        double whole = columns.stream().mapToDouble(PrintedColumn::whole).max().orElseThrow();
        double answer =
                columns.stream().mapToDouble(each -> Cells.width(each.answer())).max().orElse(0);
        double widest = Math.max(whole + decimals, answer);
        double cues = cues(columns, setting);
        double highest = highestFigures(PrintedColumn.mostRows(columns), setting);
        return Across.fit(
                        MOST_ACROSS,
                        setting.across() - gutter(setting),
                        gap(setting),
                        setting.size(),
                        width -> Math.min(highest, (width - 2 * SIDE - cues) / widest))
                .map(across -> new ColumnShape(across, decimals, widest, cues, setting))
                .orElseThrow(() -> tooWide(columns, setting));
    }

    /// Lays a column, with its top at `top`, in the place of that number from the left.
    ///
    /// @param rows how many rows there is room for above the answer box
    void lay(Flow flow, PrintedColumn column, int place, int rows, double air) {
        double left = left(place);
        double top = flow.y();
        double unit =
                left + (across.width() + cues + across.figures() * (widest - 2 * decimals)) / 2;
        List<Element> cells = new ArrayList<>();
        cells.add(row(flow.leaf(Role.HEADS_COLUMN, number(flow, column.label(), left))));
        for (int i = 0; i < column.rows().size(); i++) {
            PrintedNumber number = column.rows().get(i);
            double x = unit - across.figures() * Cells.width(number.whole());
            double baseline = baseline(top, i + 1, air);
            List<Mark> marks = new ArrayList<>(cue(column, i, left, baseline));
            marks.add(new Figures(x, baseline, across.figures(), number.figures()));
            cells.add(row(flow.leaf(Role.CELL, marks)));
        }
        cells.add(row(flow.leaf(Role.CELL, answer(column, unit, top + height(rows, air)))));
        flow.put(new Element.Group(Role.TABLE, cells));
        double box = setting.size().box();
        double boxTop = top + height(rows, air) - box;
        flow.decorate(new Box(left, boxTop, across.width(), box, Ink.LINE));
    }

    private List<Mark> cue(PrintedColumn column, int row, double left, double baseline) {
        if (column.cues().isEmpty() || column.cues().get(row).isEmpty()) {
            return List.of();
        }
        String cue = column.cues().get(row);
        double size = cueSize(setting);
        return List.of(new Words(left + SIDE, baseline, Face.BOLD, size, Ink.BLACK, cue));
    }

    /// The answer in the box, its end under the ends of the rows.
    private List<Mark> answer(PrintedColumn column, double unit, double bottom) {
        if (column.answer().isEmpty()) {
            return List.of();
        }
        double figures = across.figures();
        String answer = column.answer();
        int point = answer.indexOf('.');
        String whole = point < 0 ? answer : answer.substring(0, point);
        double start = unit - figures * Cells.width(whole);
        double baseline = bottom - (setting.size().box() - DIGIT * figures) / 2;
        return List.of(new Figures(start, baseline, figures, answer));
    }

    private static double cues(List<PrintedColumn> columns, Setting setting) {
        return columns.stream()
                .flatMap(column -> column.cues().stream())
                .filter(cue -> !cue.isEmpty())
                .mapToDouble(cue -> setting.width(Face.BOLD, cueSize(setting), cue) + SIDE)
                .max()
                .orElse(0);
    }

    private static double cueSize(Setting setting) {
        return setting.pick(8, 14);
    }

    /// The height of a column of so many rows.
    double height(int rows, double air) {
        return above(setting) + rows * pitch(air) + SIDE + setting.size().box();
    }

    /// The rows that a height has room for.
    int rowsIn(double height) {
        return (int) ((height - height(0, 0)) / pitch(0));
    }

    /// Where a row ends, counted from 1, in a column with its top at `top`.
    double bottom(double top, int row, double air) {
        return top + above(setting) + row * pitch(air);
    }

    /// The line on which a row stands: the room above and below the figures is the same.
    double baseline(double top, int row, double air) {
        return bottom(top, row, air) - (pitch(air) - DIGIT * across.figures()) / 2;
    }

    /// Where the column of that place begins.
    double left(int place) {
        return setting.left() + gutter(setting) + place * (across.width() + gap(setting));
    }

    /// The room for row numbers at the left.
    static double gutter(Setting setting) {
        return setting.pick(16, 24);
    }

    private Mark number(Flow flow, String label, double left) {
        String text = setting.words().say("problem", label);
        double fitting = across.width() / setting.width(Face.BOLD, 1, text);
        double size = Math.min(labelSize(setting), fitting);
        double middle = left + across.width() / 2;
        double width = Math.min(across.width(), setting.width(Face.BOLD, size, text) + size * 2);
        flow.decorate(new Bead(middle - width / 2, flow.y(), width, size * 1.5, Ink.LINE));
        return setting.centred(middle, flow.y() + size * 1.08, Face.BOLD, size, text);
    }

    private static Element row(Element cell) {
        return new Element.Group(Role.ROW, List.of(cell));
    }

    private double pitch(double air) {
        return across.figures() * (CLOSE + AIRY * air);
    }

    /// The largest figures with which so many rows still go on a page below the head of a sheet.
    private static double highestFigures(int rows, Setting setting) {
        double head = setting.pick(140, 190);
        double room =
                setting.page().bottom()
                        - setting.page().top()
                        - head
                        - above(setting)
                        - SIDE
                        - setting.size().box();
        return Math.max(setting.size().leastFigures(), room / (rows * CLOSE));
    }

    /// The room of the bead above the rows.
    private static double above(Setting setting) {
        return labelSize(setting) * 1.5 + 3;
    }

    private static double labelSize(Setting setting) {
        return setting.pick(9, 14);
    }

    private static double gap(Setting setting) {
        return setting.pick(8, 12);
    }

    private static Unprintable tooWide(List<PrintedColumn> columns, Setting setting) {
        PrintedColumn longest = PrintedColumn.longest(columns);
        String row = longest.longestRow().figures();
        return new Unprintable(new Reason.TooWide(longest.label(), row, setting.size()));
    }
}
