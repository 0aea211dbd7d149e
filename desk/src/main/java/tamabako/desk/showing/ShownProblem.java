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

    /// The sums of a plan: so many that are made, or all of its sheet; empty where there are none.
    static Optional<List<Column>> all(ClassBook book, Showing showing, Fields fields, int count) {
        String sheet = fields.text("sheet");
        String seed = fields.text("seed");
        if (sheet.isEmpty()) {
            long from = seed.matches("\\d{1,9}") ? Long.parseLong(seed) : 0;
            return Maker.make(wish(showing), count, from) instanceof Made.Found(var problems, _)
                    ? Optional.of(problems.stream().map(Column.class::cast).toList())
                    : Optional.empty();
        }
        List<Column> columns = columns(book, sheet);
        return columns.isEmpty() ? Optional.empty() : Optional.of(columns);
    }

    private static ColumnWish wish(Showing showing) {
        return ColumnWish.of(showing.rows(), showing.digits())
                .withMinusRows(showing.minus())
                .withCustomsOfPractice();
    }

    private static Found made(Showing showing, long seed) {
        return switch (Maker.make(wish(showing), 1, seed)) {
            case Made.Found(List<Problem> problems, _) ->
                    new Found.Good(mental((Column) problems.getFirst(), 0, 0));
            case Made.Impossible(_, Made.Reason reason, _) -> new Found.NotMade(reason);
            case Made.NotFound(_, Made.Reason reason) -> new Found.NotMade(reason);
        };
    }

    private static List<Column> columns(ClassBook book, String sheet) {
        List<Column> columns = new ArrayList<>();
        book.sheets()
                .find(sheet)
                .ifPresent(kept -> {
                    for (Problem problem : kept.sheet().problems()) {
                        if (problem instanceof Column column) {
                            columns.add(column);
                        }
                    }
                });
        return columns;
    }

    private static Found listed(ClassBook book, String id, String number) {
        List<Column> columns = columns(book, id);
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
