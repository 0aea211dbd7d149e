package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.frame.Cause;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Working;
import tamabako.frame.column.ColumnWork;
import tamabako.frame.product.ProductWork;
import tamabako.frame.quotient.QuotientWork;
import tamabako.testkit.Draw;

/// The packed steps are those of the trace, step for step.
class FastStepsTest {

    @Test
    void ofAColumn() {
        forSeeds(
                3_000,
                draw -> {
                    int places = draw.chance(1, 3) ? draw.between(1, 2) : 0;
                    List<BigDecimal> rows = rows(draw, places);
                    Working working = ColumnWork.work(rows, Setup.COMMON);

                    FastColumn column =
                            new FastColumn(
                                    rows.stream().mapToLong(FastStepsTest::units).toArray(),
                                    places);

                    StepLog expected = new StepLog();
                    for (Step step : steps(working)) {
                        note(step, places, Code.row(row(step.cause().entry())), expected);
                    }
                    assertThat(column.log(0)).hasToString(expected.toString());
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

    @Test
    void ofAProduct() {
        forSeeds(
                1_000,
                draw -> {
                    BigDecimal first = draw.decimal(draw.length(5), draw.between(0, 2));
                    BigDecimal second = draw.decimal(draw.length(4), draw.between(0, 2));

                    StepLog log = ProductSlips.work(units(first), units(second));

                    StepLog expected = new StepLog();
                    for (Step step : steps(ProductWork.work(first, second, Setup.COMMON))) {
                        if (step.cause().entry()
                                instanceof Cause.PartialProduct(_, int digit, _, int by)) {
                            int where = Code.product(digit, by);
                            note(step, first.scale() + second.scale(), where, expected);
                        }
                    }
                    assertThat(log).hasToString(expected.toString());
                });
    }

    @Test
    void ofAQuotientWhereNothingIsRevised() {
        int[] compared = new int[1];
        forSeeds(
                3_000,
                draw -> {
                    BigDecimal divisor = new BigDecimal(draw.whole(draw.length(3)));
                    BigDecimal dividend =
                            new BigDecimal(draw.whole(divisor.precision() + draw.length(4)));
                    List<Step> steps =
                            steps(
                                    QuotientWork.work(
                                            dividend, divisor, 0, Rounding.DOWN, Setup.COMMON));
                    if (steps.stream().anyMatch(FastStepsTest::isRevision)) {
                        return;
                    }
                    compared[0]++;
                    FastDivision division = new FastDivision(units(dividend), units(divisor));

                    StepLog taken = new StepLog();
                    StepLog set = new StepLog();
                    for (Step step : steps) {
                        switch (step.cause().entry()) {
                            case Cause.ProductTaken(_, int first, _, int second) ->
                                    note(
                                            step,
                                            divisor.precision() + 1,
                                            Code.product(first, second),
                                            taken);
                            case Cause.TrialDigit _ -> note(step, 0, Code.answer(), set);
                            default -> {}
                        }
                    }
                    assertThat(division.taken()).hasToString(taken.toString());
                    assertThat(division.set()).hasToString(set.toString());
                });
        assertThat(compared[0]).isGreaterThan(250);
    }

    private static boolean isRevision(Step step) {
        return switch (step.cause().entry()) {
            case Cause.RevisedDown _, Cause.RevisedUp _ -> true;
            default -> false;
        };
    }

    private static long units(BigDecimal number) {
        return number.unscaledValue().longValueExact();
    }

    private static List<Step> steps(Working working) {
        List<Step> steps = new ArrayList<>(working.setting().steps());
        steps.addAll(working.trace().steps());
        return steps;
    }

    private static void note(Step step, int lowest, int where, StepLog log) {
        StepLog.Role role =
                switch (step.cause()) {
                    case Cause.Carry _ -> StepLog.Role.CARRY;
                    case Cause.Borrow _ -> StepLog.Role.BORROW;
                    case Cause.Loan _, Cause.LoanReturned _ -> StepLog.Role.LOAN;
                    default -> StepLog.Role.ENTRY;
                };
        log.note(step.rod() + lowest, step.digit(), step.before().value(), role, where);
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
