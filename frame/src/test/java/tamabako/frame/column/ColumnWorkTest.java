package tamabako.frame.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.frame.Frame;
import tamabako.frame.Setup;
import tamabako.frame.Trace;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;

/// The handbooks' worked columns, state for state.
///
/// Sources: HF = Heffelfinger and Flom, Abacus: Mystery of the Bead; TOCHIO = K. Tochio,
/// Computation on the Soroban (Yokohama 1912); TR = T. Reincke in the Bernazzani handbook, negative
/// numbers. States that the source does not print follow from its rule.
class ColumnWorkTest {

    @ParameterizedTest
    @CsvSource({
        "HF, 34 78, 034 004 104 102 112, 112",
        "HF, 8.9 56, 089 589 549 649, 64.9",
        "HF, 45.7 4.5, 457 497 492 402 502, 50.2",
        "TOCHIO, 357 823, 0357 0157 1157 1177 1170 1180, 1180",
        "TOCHIO four-rod cascade, 9731 269, 09731 09931 09991 09990 09900 09000 00000 10000, 10000",
        "TOCHIO rule, 99 1, 099 090 000 100, 100",
        "TOCHIO, 816 -652, 816 216 116 166 164, 164",
        "TOCHIO, 1000 -997, 1000 0000 0100 0000 0010 0000 0003, 3",
        "HF, 102 -78, 102 002 032 022 024, 24",
        "HF, 22.3 -2.8, 223 203 103 193 195, 19.5",
    })
    void statesOfAHandbookExample(String source, String rows, String states, BigDecimal answer) {
        Working working = work(rows);

        assertThat(digits(working.trace().states())).as(source).isEqualTo(states);
        assertThat(working.outcome().answer()).isEqualByComparingTo(answer);
    }

    @ParameterizedTest
    @CsvSource({
        "HF, 0 -95, 000 100 010 005, -95",
        "HF, 0 -95 118, 000 100 010 005 105 115 123 023, 23",
        "TR, 23 -61, 023 123 063 062, -38",
    })
    void restsOfAHandbookExampleBelowZero(
            String source, String rows, String rests, BigDecimal answer) {
        Working working = work(rows);

        assertThat(digits(working.trace().rests())).as(source).isEqualTo(rests);
        assertThat(working.outcome().answer()).isEqualByComparingTo(answer);
    }

    private static Working work(String rows) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (String row : rows.split(" ", -1)) {
            numbers.add(new BigDecimal(row));
        }
        return ColumnWork.work(numbers, Setup.COMMON);
    }

    private static String digits(List<Frame> frames) {
        return String.join(" ", frames.stream().map(Frame::digits).toList());
    }

    @Test
    void theUnitRodStandsWhereItIsAskedFor() {
        Setup fifth = Setup.COMMON.withUnit(5);

        Working working = ColumnWork.work(List.of(new BigDecimal("1.5"), BigDecimal.ONE), fifth);

        assertThat(digits(working.trace().states())).isEqualTo("000015 000025");
        assertThatThrownBy(() -> ColumnWork.work(List.of(new BigDecimal(123456)), fifth))
                .isInstanceOf(Unworkable.class)
                .hasMessageContaining("123456 needs 6 rods")
                .hasMessageContaining("the frame has 5");
    }

    @Test
    void anyColumnComesToItsExactSum() {
        forSeeds(
                20_000,
                draw -> {
                    int places = draw.between(0, 3);
                    List<BigDecimal> rows = new ArrayList<>();
                    int count = draw.between(1, 10);
                    for (int i = 0; i < count; i++) {
                        BigDecimal row = draw.decimal(draw.length(10), places);
                        rows.add(draw.chance(1, 3) ? row.negate() : row);
                    }

                    Trace trace = ColumnWork.work(rows, Setup.COMMON).trace();
                    Working working = ColumnWork.work(rows, Setup.COMMON);

                    BigDecimal sum = rows.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
                    assertThat(working.outcome().answer()).isEqualByComparingTo(sum);
                    assertThat(trace).isEqualTo(working.trace());
                });
    }
}
