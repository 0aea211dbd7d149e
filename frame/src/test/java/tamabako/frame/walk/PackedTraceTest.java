package tamabako.frame.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tamabako.frame.CarryOrder;
import tamabako.frame.Cause;
import tamabako.frame.Habits;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Stroke;
import tamabako.frame.Technique;
import tamabako.frame.Working;
import tamabako.frame.column.ColumnWork;

class PackedTraceTest {

    /// The cause of a loan names no place.
    private static final int UNNAMED = -1;

    /// A step of either kind in the same words.
    record Told(
            int row,
            int rod,
            int digit,
            Technique technique,
            int before,
            int after,
            int strokes,
            int upper,
            int lower,
            PackedStep.Entry entry,
            int place,
            boolean passed) {}

    @ParameterizedTest
    @EnumSource
    void aPackedTraceIsTheTraceStepForStep(CarryOrder order) {
        Setup setup = Setup.COMMON.with(Habits.COMMON.with(order));
        List<PackedTrace> traces =
                IntStream.rangeClosed(0, 3)
                        .mapToObj(places -> new PackedTrace(places, order))
                        .toList();
        forSeeds(
                30_000,
                draw -> {
                    int places = draw.between(0, 3);
                    List<BigDecimal> rows = Rows.anySign(draw, places);
                    PackedTrace trace = traces.get(places);

                    trace.work(Rows.packed(rows, places), rows.size());

                    Working working = ColumnWork.work(rows, setup);
                    List<Told> steps =
                            Stream.of(working.setting(), working.trace())
                                    .flatMap(part -> part.steps().stream())
                                    .map(step -> told(step, places))
                                    .toList();
                    assertThat(told(trace)).as("%s", rows).isEqualTo(steps);
                    assertThat(trace.total())
                            .isEqualTo(
                                    working.outcome()
                                            .answer()
                                            .scaleByPowerOfTen(places)
                                            .longValueExact());
                });
    }

    private static List<Told> told(PackedTrace trace) {
        List<Told> told = new ArrayList<>();
        int index = 0;
        for (int row = 0; row < trace.rows(); row++) {
            for (; index < trace.endOfRow(row); index++) {
                told.add(told(trace.step(index), row + 1));
            }
        }
        assertThat(index).isEqualTo(trace.size());
        return told;
    }

    private static Told told(int step, int row) {
        return new Told(
                row,
                PackedStep.rod(step),
                PackedStep.digit(step),
                PackedStep.technique(step),
                PackedStep.before(step),
                PackedStep.after(step),
                PackedStep.strokes(step),
                PackedStep.upper(step),
                PackedStep.lower(step),
                PackedStep.entry(step),
                isOfLoan(PackedStep.entry(step)) ? UNNAMED : PackedStep.place(step),
                PackedStep.isPassed(step));
    }

    private static Told told(Step step, int places) {
        Cause entry = step.cause().entry();
        List<Stroke> strokes = step.strokes();
        return new Told(
                row(entry),
                step.rod() + places,
                step.digit(),
                step.technique(),
                step.before().value(),
                step.after().value(),
                strokes.size(),
                change(strokes, Stroke.Upper.class) / 5,
                change(strokes, Stroke.Lower.class),
                kind(entry),
                place(step, places),
                !entry.equals(step.cause()));
    }

    private static int change(List<Stroke> strokes, Class<? extends Stroke> kind) {
        return strokes.stream().filter(kind::isInstance).mapToInt(Stroke::change).sum();
    }

    private static int row(Cause entry) {
        return switch (entry) {
            case Cause.Row(int row, _) -> row;
            case Cause.Loan(int row) -> row;
            case Cause.LoanReturned(int row) -> row;
            default -> 1;
        };
    }

    private static PackedStep.Entry kind(Cause entry) {
        return switch (entry) {
            case Cause.Setting _ -> PackedStep.Entry.SETTING;
            case Cause.Row _ -> PackedStep.Entry.ROW;
            case Cause.Loan _ -> PackedStep.Entry.LOAN;
            case Cause.LoanReturned _ -> PackedStep.Entry.LOAN_RETURNED;
            default -> throw new AssertionError("No column has a step for " + entry + ".");
        };
    }

    private static boolean isOfLoan(PackedStep.Entry entry) {
        return entry == PackedStep.Entry.LOAN || entry == PackedStep.Entry.LOAN_RETURNED;
    }

    private static int place(Step step, int places) {
        return switch (step.cause().entry()) {
            case Cause.Setting(_, int place) -> place + places;
            case Cause.Row(_, int place) -> place + places;
            default -> UNNAMED;
        };
    }
}
