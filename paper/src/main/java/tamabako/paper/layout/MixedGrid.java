package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;

/// Cells of any kinds in rows, in their order: each takes one place of a row or more, and where one
/// of a row is high, others that follow one another share a place beside it, one below the other.
///
/// @param across how many places a row has
/// @param figures the size of all figures
record MixedGrid(List<MixedCell> cells, int across, double figures, Setting setting) {

    private static final int MOST_ACROSS = 7;
    private static final double STEP = 0.5;

    /// Cells in one place of a row.
    ///
    /// @param place the first of its places, from 0
    /// @param places how many it takes
    record Slot(int place, int places, List<MixedCell> cells) {
        Slot {
            cells = List.copyOf(cells);
        }
    }

    MixedGrid {
        cells = List.copyOf(cells);
    }

    /// The clear room between the rule around a cell and what is in it.
    static double inset(Setting setting) {
        return setting.pick(3, 5);
    }

    /// All grids whose places are wide enough, those with the largest figures first.
    static List<MixedGrid> all(List<MixedCell> cells, Setting setting) {
        List<MixedGrid> grids = new ArrayList<>();
        double least = setting.size().leastFigures();
        for (double size = setting.size().mostFigures(); size >= least; size -= STEP) {
            for (int across = 1; across <= MOST_ACROSS; across++) {
                MixedGrid grid = new MixedGrid(cells, across, size, setting);
                if (grid.cells().stream().allMatch(cell -> grid.places(cell) <= grid.across())) {
                    grids.add(grid);
                }
            }
        }
        return grids;
    }

    /// The rows, at their closest.
    List<List<Slot>> rows() {
        List<List<Slot>> rows = new ArrayList<>();
        int next = 0;
        while (next < cells.size()) {
            List<Slot> row = row(next);
            rows.add(row);
            next += row.stream().mapToInt(slot -> slot.cells().size()).sum();
        }
        return rows;
    }

    /// The height of a row: that of its highest place.
    double height(List<Slot> row, double air) {
        return row.stream()
                .mapToDouble(
                        slot -> slot.cells().stream().mapToDouble(cell -> height(cell, air)).sum())
                .max()
                .orElseThrow();
    }

    /// The height of a cell with the clear room in it.
    double height(MixedCell cell, double air) {
        return cell.height(figures, air) + 2 * inset(setting);
    }

    /// Whether its places, and so the answer boxes, are narrower than those of columns elsewhere.
    boolean isNarrow() {
        return across > ColumnShape.MOST_ACROSS;
    }

    /// The width of a place.
    double place() {
        return setting.across() / across;
    }

    /// The width of a place in a row whose cells share out what is not taken.
    double wide(List<Slot> row) {
        return setting.across() / row.stream().mapToInt(Slot::places).sum();
    }

    /// A row is filled again while higher cells come into it, for beside these more fit.
    private List<Slot> row(int first) {
        double height = 0;
        while (true) {
            List<Slot> row = filled(first, height);
            double highest =
                    row.stream()
                            .flatMap(slot -> slot.cells().stream())
                            .mapToDouble(cell -> height(cell, 0))
                            .max()
                            .orElseThrow();
            if (highest <= height) {
                return row;
            }
            height = highest;
        }
    }

    private List<Slot> filled(int first, double height) {
        List<Slot> row = new ArrayList<>();
        int place = 0;
        int next = first;
        while (next < cells.size() && place + places(cells.get(next)) <= across) {
            int places = places(cells.get(next));
            int end = next + 1;
            double taken = height(cells.get(next), 0);
            while (end < cells.size()
                    && places(cells.get(end)) == places
                    && taken + height(cells.get(end), 0) <= height) {
                taken += height(cells.get(end), 0);
                end++;
            }
            row.add(new Slot(place, places, cells.subList(next, end)));
            place += places;
            next = end;
        }
        return row;
    }

    private int places(MixedCell cell) {
        double width = cell.width(figures);
        return Double.isInfinite(width)
                ? across
                : (int) Math.ceil((width + 2 * inset(setting)) / place());
    }
}
