package tamabako.desk.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import tamabako.frame.Technique;
import tamabako.insight.mastery.CellMastery;
import tamabako.insight.mastery.MoveMastery;
import tamabako.insight.mastery.PupilMastery;
import tamabako.insight.mastery.Statement;
import tamabako.insight.slip.Cell;
import tamabako.insight.slip.Move;

/// The table of held and added digits, or of held and taken ones, with what the pupil's work shows
/// in each of its ninety cells.
///
/// @param rows one for each digit that a rod may hold, 0 to 9
public record DigitTable(List<Row> rows) {

    /// So often a cell must have been met before its slips say anything.
    private static final int ENOUGH = 5;

    /// From so many slips, as far as the answers show, a cell is pointed out.
    private static final double SOME = 0.75;

    public DigitTable {
        rows = List.copyOf(rows);
    }

    /// What is done where a rod holds one digit.
    ///
    /// @param cells for the digits 1 to 9
    public record Row(int held, List<Square> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /// One cell.
    ///
    /// @param digit what is added or taken, 1 to 9
    /// @param technique how it is done: `direct`, `five-complement`, `ten-complement` or
    ///   `ten-with-five`
    /// @param statement what is said of that move as a whole, such as `mastered`
    /// @param seen what this cell alone shows: `rare`, `smooth` or `slips`
    /// @param met how often it was met
    /// @param slips how many slips were made there, as far as the answers show, with one decimal
    public record Square(
            int digit, String technique, String statement, String seen, int met, String slips) {}

    /// The table of a pupil.
    ///
    /// @param adding whether digits are added, or taken
    static DigitTable of(PupilMastery mastery, boolean adding) {
        Map<Move, Statement> statements =
                mastery.moves().stream()
                        .collect(Collectors.toMap(MoveMastery::move, MoveMastery::statement));
        Map<Cell, CellMastery> cells =
                mastery.cells().stream()
                        .collect(Collectors.toMap(CellMastery::cell, Function.identity()));
        List<Row> rows = new ArrayList<>();
        for (int held = 0; held <= 9; held++) {
            List<Square> squares = new ArrayList<>();
            for (int digit = 1; digit <= 9; digit++) {
                Cell cell = new Cell(held, adding ? digit : -digit);
                CellMastery known = cells.getOrDefault(cell, new CellMastery(cell, 0, 0));
                Statement statement =
                        statements.getOrDefault(cell.move(), Statement.NEEDS_EVIDENCE);
                squares.add(square(held, digit, adding, known, statement));
            }
            rows.add(new Row(held, squares));
        }
        return new DigitTable(rows);
    }

    private static Square square(
            int held, int digit, boolean adding, CellMastery known, Statement statement) {
        Technique technique =
                adding ? Technique.ofAdding(held, digit) : Technique.ofTaking(held, digit);
        String seen = known.slips() >= SOME ? "slips" : known.met() >= ENOUGH ? "smooth" : "rare";
        return new Square(
                digit,
                technique.word(),
                statement.word(),
                seen,
                known.met(),
                Decimals.tenths(known.slips()));
    }
}
