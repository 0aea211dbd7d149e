package tamabako.problems.making.column;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import tamabako.problems.Column;
import tamabako.problems.making.draw.Powers;
import tamabako.problems.words.Sayable;

/// How large a column is. No row is zero, and none begins with a zero.
///
/// @param rows how many rows (kuchi), the first included
/// @param lengths how many digits they have
/// @param places how many of the digits stand behind the point
public record Shape(int rows, Lengths lengths, int places) implements Sayable {

    @Override
    public String topic() {
        return "asked";
    }

    /// How many rows have to be like an earlier one, as there are not enough different numbers.
    int mustBeAlike() {
        if (!(lengths instanceof Lengths.Table(List<Integer> digits))) {
            long numbers = Powers.of(lengths.most()) - Powers.of(lengths.least() - 1);
            return (int) Math.max(0, rows - numbers);
        }
        long alike = 0;
        for (int length = lengths.least(); length <= lengths.most(); length++) {
            int one = length;
            long same = digits.stream().filter(other -> other == one).count();
            alike += Math.max(0, same - 9 * Powers.of(length - 1));
        }
        return (int) alike;
    }

    /// What of `column` does not have this shape.
    public List<Missed> missedBy(Column column) {
        List<Missed> missed = new ArrayList<>();
        if (column.rows().size() != rows) {
            missed.add(new Missed.RowCount(column.rows().size(), rows));
        }
        List<Integer> digits = new ArrayList<>();
        for (BigDecimal row : column.rows()) {
            digits.add(row.precision());
            boolean fits = row.precision() >= lengths.least() && row.precision() <= lengths.most();
            if (row.signum() == 0 || row.scale() != places || !fits) {
                missed.add(new Missed.RowLength(digits.size(), row));
            }
        }
        if (missed.isEmpty() && !fitTogether(digits)) {
            missed.add(new Missed.LengthsTogether(digits.stream().mapToInt(one -> one).sum()));
        }
        return missed;
    }

    private boolean fitTogether(List<Integer> digits) {
        return switch (lengths) {
            case Lengths.Between _ -> true;
            case Lengths.Table table -> table.equals(new Lengths.Table(digits));
            case Lengths.Total(int all, _, _) -> digits.stream().mapToInt(one -> one).sum() == all;
        };
    }
}
