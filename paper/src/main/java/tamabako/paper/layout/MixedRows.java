package tamabako.paper.layout;

import java.util.Comparator;
import java.util.List;
import tamabako.paper.layout.Mark.Box;
import tamabako.paper.layout.MixedCell.Room;
import tamabako.paper.layout.MixedGrid.Slot;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;

/// Problems of kinds that alternate, in rows of cells, one numbering through all of them.
final class MixedRows implements Piece {

    private final List<MixedCell> cells;
    private final List<MixedGrid> grids;
    private final Setting setting;

    MixedRows(List<MixedCell> cells, Setting setting) {
        this.cells = cells;
        this.grids = MixedGrid.all(cells, setting);
        this.setting = setting;
        if (grids.isEmpty()) {
            throw tooWide();
        }
    }

    /// Between two rows a page may turn.
    @Override
    public boolean hangsTogether() {
        return false;
    }

    @Override
    public double opening(double air) {
        MixedGrid closest = grids.getLast();
        return closest.height(closest.rows().getFirst(), 0);
    }

    @Override
    public void lay(Flow flow, double air) {
        double page = flow.roomOfPage();
        cells.forEach(cell -> checkHeight(cell, page));
        MixedGrid grid = best(flow.room(), page);
        List<List<Slot>> rows = grid.rows();
        int next = 0;
        while (next < rows.size()) {
            flow.require(grid.height(rows.get(next), 0));
            int end = next + fitting(grid, rows.subList(next, rows.size()), flow.room());
            layPage(flow, grid, rows.subList(next, end), air, end == rows.size());
            next = end;
        }
        flow.down(setting.pick(8, 10));
    }

    /// Rows on one page, as airy as they may be on it.
    private void layPage(
            Flow flow, MixedGrid grid, List<List<Slot>> rows, double air, boolean last) {
        double fitting =
                Layout.AIRS.stream()
                        .filter(each -> each <= air)
                        .filter(each -> height(grid, rows, each) <= flow.room())
                        .findFirst()
                        .orElse(0.0);
        for (int i = 0; i < rows.size(); i++) {
            List<Slot> row = rows.get(i);
            double height = grid.height(row, fitting);
            double place = last && i == rows.size() - 1 ? grid.place() : grid.wide(row);
            if (!flow.isTrial()) {
                row.forEach(slot -> lay(flow, grid, slot, place, height, fitting));
            }
            flow.down(height);
        }
    }

    /// How many of the rows a height holds, at least one.
    private static int fitting(MixedGrid grid, List<List<Slot>> rows, double height) {
        int fitting = 1;
        while (fitting < rows.size() && height(grid, rows.subList(0, fitting + 1), 0) <= height) {
            fitting++;
        }
        return fitting;
    }

    private static double height(MixedGrid grid, List<List<Slot>> rows, double air) {
        return rows.stream().mapToDouble(row -> grid.height(row, air)).sum();
    }

    /// The grid that takes the fewest pages, of these with the largest figures, of these with no
    /// narrower places than columns have elsewhere, of these with the fewest rows, of these with
    /// the widest places.
    private MixedGrid best(double first, double page) {
        return grids.stream()
                .map(grid -> Tried.of(grid, first, page))
                .min(
                        Comparator.comparingInt(Tried::pages)
                                .thenComparingDouble(tried -> -tried.grid().figures())
                                .thenComparing(tried -> tried.grid().isNarrow())
                                .thenComparingInt(Tried::rows)
                                .thenComparingInt(tried -> tried.grid().across()))
                .orElseThrow()
                .grid();
    }

    /// How many pages a grid takes, and how many rows.
    private record Tried(MixedGrid grid, int pages, int rows) {

        static Tried of(MixedGrid grid, double first, double page) {
            List<List<Slot>> rows = grid.rows();
            if (rows.stream().anyMatch(row -> grid.height(row, 0) > page)) {
                return new Tried(grid, Integer.MAX_VALUE, rows.size());
            }
            boolean begins = grid.height(rows.getFirst(), 0) <= first;
            int pages = begins ? 0 : 1;
            double room = begins ? first : page;
            int next = 0;
            while (next < rows.size()) {
                next += fitting(grid, rows.subList(next, rows.size()), room);
                room = page;
                pages++;
            }
            return new Tried(grid, pages, rows.size());
        }
    }

    /// What is not used of the height of a row is shared out among the cells of each place.
    private void lay(
            Flow flow, MixedGrid grid, Slot slot, double place, double height, double air) {
        double width = slot.places() * place;
        double left = setting.left() + slot.place() * place;
        double taken = slot.cells().stream().mapToDouble(cell -> grid.height(cell, air)).sum();
        double more = (height - taken) / slot.cells().size();
        double inset = MixedGrid.inset(setting);
        double top = flow.y();
        for (MixedCell cell : slot.cells()) {
            double high = grid.height(cell, air) + more;
            flow.decorate(new Box(left, top, width, high, Ink.HAIR));
            Room inside = new Room(left + inset, top + inset, width - 2 * inset, high - 2 * inset);
            cell.lay(flow, inside, grid.figures(), air);
            top += high;
        }
    }

    private void checkHeight(MixedCell cell, double page) {
        double inside = page - 2 * MixedGrid.inset(setting);
        cell.tooHigh(setting.size().leastFigures(), inside)
                .ifPresent(reason -> {
                    throw new Unprintable(reason);
                });
    }

    private Unprintable tooWide() {
        double least = setting.size().leastFigures();
        MixedCell widest =
                cells.stream()
                        .filter(cell -> !Double.isInfinite(cell.width(least)))
                        .max(Comparator.comparingDouble(cell -> cell.width(least)))
                        .orElseThrow();
        return new Unprintable(new Reason.TooWide(widest.label(), widest.told(), setting.size()));
    }
}
