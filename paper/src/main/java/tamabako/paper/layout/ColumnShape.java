package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// How the columns of a section stand side by side, all in one form.
record ColumnShape(Across across, ColumnForm form, Setting setting) {

    private static final int MOST_ACROSS = 5;

    /// The shape that all `columns` fit.
    ///
    /// @throws Unprintable if a row is longer than a line
    static ColumnShape of(List<PrintedColumn> columns, Setting setting) {
        double decimals = ColumnForm.decimals(columns);
        double widest = ColumnForm.widest(columns);
        double cues = cues(columns, setting);
        double highest = highestFigures(PrintedColumn.mostRows(columns), setting);
        return Across.fit(
                        MOST_ACROSS,
                        setting.across() - gutter(setting),
                        gap(setting),
                        setting.size(),
                        width -> Math.min(highest, (width - 2 * ColumnForm.SIDE - cues) / widest))
                .map(across ->
                        new ColumnShape(
                                across,
                                new ColumnForm(
                                        across.width(),
                                        across.figures(),
                                        decimals,
                                        widest,
                                        cues,
                                        setting),
                                setting))
                .orElseThrow(() -> tooWide(columns, setting));
    }

    /// Lays a column in the place of that number from the left.
    ///
    /// @param rows how many rows there is room for above the answer box
    void lay(Flow flow, PrintedColumn column, int place, int rows, double air) {
        String number = setting.words().say("problem", column.label());
        form.lay(flow, number, column, left(place), flow.y(), form.height(rows, air), air);
    }

    /// Where the column of that place begins.
    double left(int place) {
        return setting.left() + gutter(setting) + place * (across.width() + gap(setting));
    }

    /// The room for row numbers at the left.
    static double gutter(Setting setting) {
        return setting.pick(16, 24);
    }

    private static double cues(List<PrintedColumn> columns, Setting setting) {
        double size = ColumnForm.cueSize(setting);
        return columns.stream()
                .flatMap(column -> column.cues().stream())
                .filter(cue -> !cue.isEmpty())
                .mapToDouble(cue -> setting.width(Face.BOLD, size, cue) + ColumnForm.SIDE)
                .max()
                .orElse(0);
    }

    /// The largest figures with which so many rows still go on a page below the head of a sheet.
    private static double highestFigures(int rows, Setting setting) {
        double head = setting.pick(140, 190);
        double room =
                setting.page().bottom()
                        - setting.page().top()
                        - head
                        - NumberBead.height(setting)
                        - ColumnForm.SIDE
                        - setting.size().box();
        return Math.max(setting.size().leastFigures(), room / (rows * ColumnForm.CLOSE));
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
