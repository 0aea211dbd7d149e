package tamabako.records.roster;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// Reads entries out of cells: finds the line of headings, and tells what cannot be taken.
final class GridReading {

    /// Spreadsheets often have a title or two above their headings.
    private static final int LOOKED_AT = 5;

    private final List<Told> wrong = new ArrayList<>();
    private final List<Told> notices = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private final Map<Integer, Field> columns = new TreeMap<>();
    private final List<String> headings;

    private GridReading(List<String> headings) {
        this.headings = headings;
    }

    static Read read(Read.Kind kind, Grid grid) {
        if (grid.lines().isEmpty()) {
            return grid.end()
                    .<Read>map(Read.Unreadable::new)
                    .orElseGet(() -> Read.unreadable(new Remark.NothingInIt()));
        }
        Optional<Grid.Line> top =
                grid.lines().stream()
                        .limit(LOOKED_AT)
                        .filter(line -> Headings.nameSomebody(line.cells()))
                        .findFirst();
        if (top.isEmpty()) {
            return new Read.Unreadable(
                    new Told(
                            Place.line(grid.lines().getFirst().number()), new Remark.NoHeadings()));
        }
        List<Grid.Line> below =
                grid.lines().subList(grid.lines().indexOf(top.get()) + 1, grid.lines().size());
        if (below.size() > RosterFile.MOST_LINES) {
            return Read.unreadable(new Remark.TooManyLines(RosterFile.MOST_LINES));
        }
        GridReading reading = new GridReading(top.get().cells());
        Optional<Told> twice = reading.columns(top.get());
        if (twice.isPresent()) {
            return new Read.Unreadable(twice.get());
        }
        below.forEach(reading::line);
        grid.end().ifPresent(reading.wrong::add);
        return new Read.Roster(kind, reading.entries, reading.wrong, reading.notices);
    }

    private Optional<Told> columns(Grid.Line top) {
        for (int at = 0; at < headings.size(); at++) {
            String heading = headings.get(at).strip();
            Place place = new Place("", top.number(), at + 1, heading);
            Optional<Field> field = Headings.find(heading);
            if (field.isPresent() && columns.containsValue(field.get())) {
                String other =
                        columns.entrySet().stream()
                                .filter(column -> column.getValue() == field.get())
                                .map(column -> headings.get(column.getKey()).strip())
                                .findFirst()
                                .orElse("");
                return Optional.of(new Told(place, new Remark.ColumnTwice(other)));
            }
            if (field.isPresent()) {
                columns.put(at, field.get());
            } else if (!heading.isEmpty()) {
                notices.add(new Told(place, new Remark.ColumnLeftOut(heading)));
            }
        }
        return Optional.empty();
    }

    private void line(Grid.Line line) {
        List<String> cells = line.cells();
        for (int at = headings.size(); at < cells.size(); at++) {
            if (!cells.get(at).isBlank()) {
                wrong.add(
                        new Told(
                                Place.line(line.number()),
                                new Remark.TooManyCells(cells.size(), headings.size())));
                return;
            }
        }
        Map<Field, String> written = new EnumMap<>(Field.class);
        Map<Field, Place> places = new EnumMap<>(Field.class);
        boolean isRight = true;
        for (Map.Entry<Integer, Field> column : columns.entrySet()) {
            int at = column.getKey();
            String cell = at < cells.size() ? tidy(cells.get(at)) : "";
            Place place = new Place("", line.number(), at + 1, headings.get(at).strip());
            Optional<Remark> flaw = Cells.flaw(column.getValue(), cell);
            flaw.ifPresent(remark -> wrong.add(new Told(place, remark)));
            isRight &= flaw.isEmpty();
            places.put(column.getValue(), place);
            if (!cell.isEmpty()) {
                written.put(column.getValue(), cell);
            }
        }
        if (isRight && !written.isEmpty()) {
            entries.add(new Entry(Place.line(line.number()), written, places));
        }
    }

    private static String tidy(String cell) {
        return FormulaGuard.off(Normalizer.normalize(cell, Normalizer.Form.NFC).strip());
    }
}
