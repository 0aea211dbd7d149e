package tamabako.problems;

import java.math.BigDecimal;
import java.util.List;
import tamabako.frame.Setup;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;
import tamabako.frame.column.ColumnWork;

/// Rows to be added and taken (mitorizan). A minus row has a minus sign.
public record Column(String id, List<BigDecimal> rows, Terms terms) implements Problem {

    /// The most rows of a column that are read from a line.
    public static final int MOST_ROWS = 1000;

    public Column {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new Unworkable(new Unworkable.Reason.NoRows());
        }
    }

    @Override
    public Answer answer() {
        return Answer.of(rows.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    @Override
    public Working work(Setup setup) {
        return ColumnWork.work(rows, setup);
    }

    @Override
    public Column withId(String changed) {
        return new Column(changed, rows, terms);
    }
}
