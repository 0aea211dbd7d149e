package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.Cells;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.Mark.Figures;
import tamabako.paper.layout.Mark.Words;

/// How a column stands: its number in a bead, the rows with units under units, an answer box below.
///
/// @param width of the column, in points
/// @param figures the size of the figures
/// @param decimals the room of the decimals, in parts of the size of the figures
/// @param widest the room of the widest number, in parts of the size of the figures
/// @param cues the room for what the caller says before a row, in points; 0 for the pupil
record ColumnForm(
        double width,
        double figures,
        double decimals,
        double widest,
        double cues,
        Setting setting) {

    /// Clear room at the sides of numbers and above the answer box.
    static final double SIDE = 3;

    /// A row at its closest, in parts of the size of the figures.
    static final double CLOSE = 1.3;

    private static final double AIRY = 0.45;

    /// The digits are so high, in parts of their size.
    static final double DIGIT = 0.8;

    /// The widest room of a number of `columns`, in parts of the size of the figures.
    static double widest(List<PrintedColumn> columns) {
        double whole = columns.stream().mapToDouble(PrintedColumn::whole).max().orElseThrow();
        double answer =
                columns.stream().mapToDouble(each -> Cells.width(each.answer())).max().orElse(0);
        return Math.max(whole + decimals(columns), answer);
    }

    /// The widest decimals of `columns`, in parts of the size of the figures.
    static double decimals(List<PrintedColumn> columns) {
        return columns.stream().mapToDouble(PrintedColumn::decimals).max().orElseThrow();
    }

    /// The height of a column of so many rows.
    double height(int rows, double air) {
        return NumberBead.height(setting) + rows * pitch(air) + SIDE + setting.size().box();
    }

    /// The rows that a height has room for.
    int rowsIn(double height) {
        return (int) ((height - height(0, 0)) / pitch(0));
    }

    /// Where a row ends, counted from 1, in a column with its top at `top`.
    double bottom(double top, int row, double air) {
        return top + NumberBead.height(setting) + row * pitch(air);
    }

    /// The line on which a row stands: the room above and below the figures is the same.
    double baseline(double top, int row, double air) {
        return bottom(top, row - 1, air) + first(figures, air);
    }

    /// How far below its top the line is on which a row stands.
    static double first(double figures, double air) {
        return (pitch(figures, air) + DIGIT * figures) / 2;
    }

    /// Lays a column, numbered by `number`, with its left edge at `left`.
    ///
    /// @param height with the answer box, which stands at its bottom
    void lay(
            Flow flow,
            String number,
            PrintedColumn column,
            double left,
            double top,
            double height,
            double air) {
        double unit = left + (width + cues + figures * (widest - 2 * decimals)) / 2;
        List<Element> cells = new ArrayList<>();
        cells.add(row(NumberBead.lay(flow, number, left, top, width, setting)));
        for (int i = 0; i < column.rows().size(); i++) {
            PrintedNumber row = column.rows().get(i);
            double x = unit - figures * Cells.width(row.whole());
            double baseline = baseline(top, i + 1, air);
            List<Mark> marks = new ArrayList<>(cue(column, i, left, baseline));
            marks.add(new Figures(x, baseline, figures, row.figures()));
            cells.add(row(flow.leaf(Role.CELL, marks)));
        }
        cells.add(row(flow.leaf(Role.CELL, answer(column, unit, top + height))));
        flow.put(new Element.Group(Role.TABLE, cells));
        double box = setting.size().box();
        flow.decorate(new Box(left, top + height - box, width, box, Ink.LINE));
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
        String answer = column.answer();
        int point = answer.indexOf('.');
        String whole = point < 0 ? answer : answer.substring(0, point);
        double start = unit - figures * Cells.width(whole);
        double baseline = bottom - (setting.size().box() - DIGIT * figures) / 2;
        return List.of(new Figures(start, baseline, figures, answer));
    }

    static double cueSize(Setting setting) {
        return setting.pick(8, 14);
    }

    private static Element row(Element cell) {
        return new Element.Group(Role.ROW, List.of(cell));
    }

    private double pitch(double air) {
        return pitch(figures, air);
    }

    private static double pitch(double figures, double air) {
        return figures * (CLOSE + AIRY * air);
    }
}
