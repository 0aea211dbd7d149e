package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Working;
import tamabako.frame.column.ColumnWork;
import tamabako.testkit.Draw;

class FastColumnTest {

    @Test
    void theStepsAreThoseOfTheTrace() {
        forSeeds(
                3_000,
                draw -> {
                    int places = draw.chance(1, 3) ? draw.between(1, 2) : 0;
                    List<BigDecimal> rows = rows(draw, places);
                    Working working = ColumnWork.work(rows, Setup.COMMON);

                    FastColumn column =
                            new FastColumn(
                                    rows.stream()
                                            .mapToLong(r -> r.unscaledValue().longValueExact())
                                            .toArray(),
                                    places);

                    StepLog expected = new StepLog();
                    working.setting().steps().forEach(step -> note(step, places, expected));
                    working.trace().steps().forEach(step -> note(step, places, expected));
                    assertThat(column.log()).hasToString(expected.toString());
                    assertThat(BigDecimal.valueOf(column.shown() - column.lent(), places))
                            .isEqualByComparingTo(working.outcome().answer());
                });
    }

    /// Sizes vary within a column, so that loans are made, replaced and given back.
    private static List<BigDecimal> rows(Draw draw, int places) {
        List<BigDecimal> rows = new ArrayList<>();
        int count = draw.between(1, 8);
        for (int i = 0; i < count; i++) {
            BigDecimal row = draw.decimal(draw.length(9), places);
            rows.add(draw.chance(2, 5) ? row.negate() : row);
        }
        return rows;
    }

    private static void note(Step step, int places, StepLog log) {
        StepLog.Role role =
                switch (step.cause()) {
                    case Cause.Carry _ -> StepLog.Role.CARRY;
                    case Cause.Borrow _ -> StepLog.Role.BORROW;
                    case Cause.Loan _, Cause.LoanReturned _ -> StepLog.Role.LOAN;
                    default -> StepLog.Role.ENTRY;
                };
        log.note(
                step.rod() + places,
                step.digit(),
                step.before().value(),
                role,
                Code.row(row(step.cause().entry())));
    }

    private static int row(Cause entry) {
        return switch (entry) {
            case Cause.Setting _ -> 1;
            case Cause.Row(int row, _) -> row;
            case Cause.Loan(int row) -> row;
            case Cause.LoanReturned(int row) -> row;
            default -> throw new IllegalArgumentException(entry + " is not in a column.");
        };
    }
}
