package tamabako.frame.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tamabako.frame.CarryOrder;
import tamabako.frame.Cause;
import tamabako.frame.Habits;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Stroke;
import tamabako.frame.Technique;
import tamabako.frame.Unworkable;
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

    @Test
    void walkAndPackedTraceAreTheTraceStepForStep() {
        forSeeds(
                40_000,
                draw -> {
                    int places = draw.between(0, 3);
                    CarryOrder order = draw.oneOf(List.of(CarryOrder.values()));
                    List<BigDecimal> rows = Rows.anySign(draw, places);
                    long[] packed = Rows.packed(rows, places);
                    ColumnWalk walk = new ColumnWalk(places);
                    PackedTrace trace = new PackedTrace(places, order);

                    walk.walk(packed, packed.length);
                    trace.work(packed, packed.length);

                    Setup setup = Setup.COMMON.with(Habits.COMMON.with(order));
                    Working working = ColumnWork.work(rows, setup);
                    assertThat(Counts.of(walk)).isEqualTo(Counts.of(working, places));
                    assertThat(told(trace)).as("%s", rows).isEqualTo(told(working, places));
                    assertThat(trace.total()).isEqualTo(walk.total());
                });
    }

    /// One trace for many columns, long ones too: what one leaves is not seen by the next.
    @Test
    void aTraceUsedAgainAndAgainIsLikeANewOne() {
        PackedTrace reused = new PackedTrace(2, CarryOrder.REMOVE_THEN_CARRY);
        forSeeds(
                2_000,
                draw -> {
                    List<BigDecimal> rows = new ArrayList<>();
                    for (int i = draw.between(1, 8); i > 0; i--) {
                        rows.addAll(Rows.anySign(draw, 2));
                    }
                    long[] packed = Rows.packed(rows, 2);
                    PackedTrace once = new PackedTrace(2, CarryOrder.REMOVE_THEN_CARRY);

                    reused.work(packed, packed.length);
                    once.work(packed, packed.length);

                    assertThat(told(reused)).isEqualTo(told(once));
                });
    }

    /// Source: K. Tochio, Computation on the Soroban (1912): 1000 - 997 by way of 0000 0100 0000
    /// 0010 0000 0003.
    @Test
    void borrowsComeBeforeTheDigit() {
        PackedTrace trace = new PackedTrace();
        trace.work(new long[] {PackedNumber.pack(1000), PackedNumber.pack(-997)}, 2);

        assertThat(told(trace).stream().map(step -> step.rod() + ":" + step.after()))
                .containsExactly("3:1", "3:0", "2:1", "2:0", "1:1", "1:0", "0:3");
    }

    @Test
    void whatIsNotThereIsRefused() {
        PackedTrace trace = new PackedTrace();
        long most = PackedNumber.pack(999_999_999_999_999L);
        trace.work(new long[] {most, most}, 2);

        assertThatThrownBy(() -> trace.step(trace.size()))
                .isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> trace.endOfRow(2)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(
                        () -> {
                            for (int i = 0; i < 9; i++) {
                                trace.put(most);
                            }
                        })
                .isInstanceOf(Unworkable.class)
                .hasMessageContaining("needs 17 rods, and the frame has 16");
    }

    private static List<Told> told(Working working, int places) {
        return Stream.of(working.setting(), working.trace())
                .flatMap(part -> part.steps().stream())
                .map(step -> told(step, places))
                .toList();
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
