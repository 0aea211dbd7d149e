package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// How the columns of a section stand side by side, all in one form.
record ColumnShape(Across across, ColumnForm form, Setting setting) {

    static final int MOST_ACROSS = 5;
    private static final double STEP = 0.5;

    /// Figures are made smaller by no more than this to save a page.
    private static final double MOST_SMALLER = 2;

    /// So much more room pages have that have no head of a sheet.
    private static final double LATER = 100;

    private static final double LATER_LARGE = 140;

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
                .map(shape -> shape.onFewestPages(columns))
                .orElseThrow(() -> tooWide(columns, setting));
    }

    /// The same with figures a little smaller where that saves a page.
    private ColumnShape onFewestPages(List<PrintedColumn> columns) {
        ColumnShape best = this;
        double least = Math.max(setting.size().leastFigures(), across.figures() - MOST_SMALLER);
        for (double figures = across.figures() - STEP; figures >= least; figures -= STEP) {
            ColumnShape smaller = with(figures);
            if (smaller.pages(columns) < best.pages(columns)) {
                best = smaller;
            }
        }
        return best;
    }

    private ColumnShape with(double figures) {
        ColumnForm smaller =
                new ColumnForm(
                        form.width(),
                        figures,
                        form.decimals(),
                        form.widest(),
                        form.cues(),
                        setting);
        return new ColumnShape(
                new Across(across.count(), across.width(), figures), smaller, setting);
    }

    /// How many pages the columns take below the head of a sheet, at their closest.
    private int pages(List<PrintedColumn> columns) {
        double page = room(setting);
        double room = page;
        int pages = 1;
        for (List<PrintedColumn> block : blocks(columns)) {
            double height = form.height(PrintedColumn.mostRows(block), 0);
            if (height > room) {
                pages++;
                room = page + setting.pick(LATER, LATER_LARGE);
            }
            room -= height + below(setting);
        }
        return pages;
    }

    /// The columns, as many as go side by side in each.
    List<List<PrintedColumn>> blocks(List<PrintedColumn> columns) {
        List<List<PrintedColumn>> blocks = new ArrayList<>();
        for (int first = 0; first < columns.size(); first += across.count()) {
            int end = Math.min(columns.size(), first + across.count());
            blocks.add(columns.subList(first, end));
        }
        return blocks;
    }

    /// The clear room below a block at its closest.
    static double below(Setting setting) {
        return setting.pick(12, 14);
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
        double room =
                room(setting) - NumberBead.height(setting) - ColumnForm.SIDE - setting.size().box();
        return Math.max(setting.size().leastFigures(), room / (rows * ColumnForm.CLOSE));
    }

    /// The room of a page below the head of a sheet.
    private static double room(Setting setting) {
        return setting.page().bottom() - setting.page().top() - setting.pick(140, 190);
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
