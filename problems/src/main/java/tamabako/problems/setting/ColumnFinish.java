package tamabako.problems.setting;

import java.math.BigDecimal;
import java.util.Optional;
import tamabako.frame.Setup;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Terms;
import tamabako.problems.grade.Format;
import tamabako.problems.making.column.HandCondition;

/// Makes of a column what the grade asks for: with its decimals and terms, and none where it breaks
/// what makers cannot be asked for.
record ColumnFinish(Format.Columns format) {

    /// A carry or borrow that passes over a rod. Makers can be asked for it, not for columns
    /// without it.
    private static final HandCondition RUNNING_ON = new HandCondition.CarryRun(2);

    /// The column as it is printed; empty where its carries run on and may not, or it lacks a
    /// technique in taking.
    Optional<Problem> of(Problem made) {
        int places = format.amounts().places();
        Terms terms = format.amounts().unit().map(Terms.PLAIN::withUnit).orElse(Terms.PLAIN);
        return Optional.of(made)
                .map(Column.class::cast)
                .filter(this::runsOnAsAllowed)
                .filter(this::takesAsRequired)
                .map(column ->
                        column.rows().stream()
                                .map(row -> new BigDecimal(row.unscaledValue(), places))
                                .toList())
                .map(rows -> new Column("", rows, terms));
    }

    private boolean runsOnAsAllowed(Column column) {
        return switch (format.beadwork().runningOn()) {
            case ALLOWED, REQUIRED -> true;
            case NEVER -> RUNNING_ON.missedBy(column).isPresent();
        };
    }

    private boolean takesAsRequired(Column column) {
        boolean hasMinus = column.rows().stream().anyMatch(row -> row.signum() < 0);
        return !format.beadwork().inTaking()
                || !hasMinus
                || format.beadwork().required().stream()
                        .allMatch(technique -> takesBy(technique, column));
    }

    private static boolean takesBy(Technique technique, Column column) {
        return column.work(Setup.COMMON).trace().steps().stream()
                .anyMatch(step -> step.digit() < 0 && step.technique() == technique);
    }
}
