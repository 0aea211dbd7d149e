package tamabako.problems.making;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.column.ColumnWork;
import tamabako.testkit.Draw;

/// The fast walk beside the work of the hand: the same techniques in every row, and the same total.
class RodsTest {

    @Test
    void theWalkUsesTheTechniquesOfTheHandInEveryRow() {
        forSeeds(
                3_000,
                draw -> {
                    int places = draw.between(0, 2);
                    long[] rows = rows(draw, 1 + draw.length(9), draw.length(6));

                    Rods rods = new Rods(places);
                    rods.set(rows[0]);
                    List<Integer> walked = new ArrayList<>();
                    for (int i = 1; i < rows.length; i++) {
                        walked.add(rods.work(rows[i]));
                    }

                    assertThat(walked).isEqualTo(byHand(rows, places));
                    long sum = 0;
                    for (long row : rows) {
                        sum += row;
                    }
                    assertThat(rods.total()).isEqualTo(sum);
                });
    }

    private static long[] rows(Draw draw, int count, int digits) {
        long[] rows = new long[count];
        for (int i = 0; i < count; i++) {
            long size = draw.whole(draw.between(1, digits)).longValueExact();
            rows[i] = i > 0 && draw.chance(1, 2) ? -size : size;
        }
        return rows;
    }

    /// The techniques of each row after the first, loans and their return included.
    private static List<Integer> byHand(long[] rows, int places) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (long row : rows) {
            numbers.add(BigDecimal.valueOf(row, places));
        }
        int[] used = new int[rows.length + 1];
        for (Step step : ColumnWork.work(numbers, Setup.COMMON).trace().steps()) {
            used[rowOf(step.cause().entry())] |= Rods.bit(step.technique());
        }
        List<Integer> bits = new ArrayList<>();
        for (int row = 2; row <= rows.length; row++) {
            bits.add(used[row]);
        }
        return bits;
    }

    private static int rowOf(Cause cause) {
        return switch (cause) {
            case Cause.Row(int row, _) -> row;
            case Cause.Loan(int row) -> row;
            case Cause.LoanReturned(int row) -> row;
            default -> throw new AssertionError("A column has no " + cause);
        };
    }
}
