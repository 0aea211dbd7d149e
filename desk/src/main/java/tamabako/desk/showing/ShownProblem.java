package tamabako.desk.showing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.desk.web.Fields;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;

/// The sum of a showing: made on the spot from a seed, or the next column of a sheet.
///
/// @param column the numbers to be shown
/// @param number its place among the columns of its sheet, from 1; 0 where it is made on the spot
/// @param of how many columns the sheet has
public record ShownProblem(Column column, int number, int of) {

    /// What came of looking for it.
    sealed interface Found {
        record Good(ShownProblem problem) implements Found {}

        /// There is no such sheet, or no columns on it.
        record NoSheet(String id) implements Found {}

        /// The numbers asked for cannot be made.
        record NotMade(Made.Reason reason) implements Found {}
    }

    static Found find(ClassBook book, Showing showing, Fields fields, long seed) {
        String sheet = fields.text("sheet");
        return sheet.isEmpty() ? made(showing, seed) : listed(book, sheet, fields.text("number"));
    }

    private static Found made(Showing showing, long seed) {
        ColumnWish wish =
                ColumnWish.of(showing.rows(), showing.digits())
                        .withMinusRows(showing.minus())
                        .withCustomsOfPractice();
        return switch (Maker.make(wish, 1, seed)) {
            case Made.Found(List<Problem> problems, _) ->
                    new Found.Good(mental((Column) problems.getFirst(), 0, 0));
            case Made.Impossible(_, Made.Reason reason, _) -> new Found.NotMade(reason);
            case Made.NotFound(_, Made.Reason reason) -> new Found.NotMade(reason);
        };
    }

    private static Found listed(ClassBook book, String id, String number) {
        Optional<KeptSheet> kept = book.sheets().find(id);
        List<Column> columns = new ArrayList<>();
        kept.ifPresent(sheet -> {
            for (Problem problem : sheet.sheet().problems()) {
                if (problem instanceof Column column) {
                    columns.add(column);
                }
            }
        });
        if (columns.isEmpty()) {
            return new Found.NoSheet(id);
        }
        int asked = number.matches("\\d{1,4}") ? Integer.parseInt(number) : 1;
        int at = Math.floorMod(asked - 1, columns.size());
        return new Found.Good(mental(columns.get(at), at + 1, columns.size()));
    }

    private static ShownProblem mental(Column column, int number, int of) {
        Column asked = new Column(column.id(), column.rows(), column.terms().withMode(Mode.MENTAL));
        return new ShownProblem(asked, number, of);
    }

    /// The numbers in plain figures, as the stage takes them.
    public List<String> rows() {
        return column.rows().stream().map(BigDecimal::toPlainString).toList();
    }
}
