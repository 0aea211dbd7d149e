package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.layout.Mark.Rule;
import tamabako.paper.layout.Mark.Words;

/// A table of figures: what each line is about, and a figure for each form.
///
/// @param heads what stands over the columns, the first over the names of the lines
/// @param lines the cells of each line, the first its name
record FormTable(List<String> heads, List<List<String>> lines, Setting setting) implements Piece {

    private static final double SIZE = 9;
    private static final double PITCH = 16;
    private static final double NAMES = 0.3;

    FormTable {
        heads = List.copyOf(heads);
        lines = lines.stream().map(List::copyOf).toList();
    }

    @Override
    public boolean hangsTogether() {
        return true;
    }

    /// All of it: a table is far shorter than a page, and is read as one.
    @Override
    public double opening(double air) {
        return (lines.size() + 1) * PITCH;
    }

    @Override
    public void lay(Flow flow, double air) {
        List<Element> rows = new ArrayList<>();
        rows.add(line(flow, heads, true));
        for (List<String> line : lines) {
            flow.require(PITCH);
            rows.add(line(flow, line, false));
        }
        flow.put(new Element.Group(Role.TABLE, rows));
        flow.down(setting.pick(10, 14));
    }

    private Element line(Flow flow, List<String> cells, boolean head) {
        double baseline = flow.y() + PITCH * 0.7;
        double width = setting.across() * (1 - NAMES) / (heads.size() - 1);
        List<Element> row = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            double right = setting.left() + setting.across() * NAMES + i * width;
            Face face = head || i == 0 ? Face.BOLD : Face.REGULAR;
            Mark mark =
                    i == 0
                            ? new Words(setting.left(), baseline, face, SIZE, Ink.BLACK, cell)
                            : setting.endingAt(right, baseline, face, SIZE, Ink.BLACK, cell);
            Role role = head ? Role.HEADS_COLUMN : i == 0 ? Role.HEADS_ROW : Role.CELL;
            row.add(cell.isEmpty() ? flow.leaf(Role.CELL) : flow.leaf(role, mark));
        }
        flow.down(PITCH);
        flow.decorate(
                new Rule(
                        setting.left(),
                        flow.y(),
                        setting.right(),
                        flow.y(),
                        head ? 0.6 : 0.3,
                        head ? Ink.LINE : Ink.HAIR));
        return new Element.Group(Role.ROW, row);
    }
}
