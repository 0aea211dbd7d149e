package tamabako.frame.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.frame.Setup;
import tamabako.frame.column.ColumnWork;
import tamabako.testkit.Draw;

class ColumnWalkTest {

    @Test
    void aWalkCountsWhatTheTraceHoldsBelowZeroToo() {
        forSeeds(
                60_000,
                draw -> {
                    int places = draw.between(0, 3);
                    List<BigDecimal> rows = new ArrayList<>();
                    int count = draw.between(1, 10);
                    int most = draw.oneOf(List.of(2, 6, 10, 14));
                    for (int i = 0; i < count; i++) {
                        rows.add(row(draw, most, places));
                    }
                    ColumnWalk walk = new ColumnWalk(places);

                    walk.walk(packed(rows, places), count);

                    assertThat(Counts.of(walk))
                            .as("%s", rows)
                            .isEqualTo(Counts.of(ColumnWork.work(rows, Setup.COMMON), places));
                });
    }

    private static BigDecimal row(Draw draw, int most, int places) {
        BigDecimal row =
                draw.chance(1, 20) ? BigDecimal.ZERO : draw.decimal(draw.length(most), places);
        return draw.chance(2, 5) ? row.negate() : row;
    }

    private static long[] packed(List<BigDecimal> rows, int places) {
        return rows.stream().mapToLong(row -> PackedNumber.pack(row, places)).toArray();
    }

    @Test
    void aWalkCountsWhatIsCountedDigitByDigit() {
        ColumnWalk walk = new ColumnWalk();
        forSeeds(
                1_000_000,
                draw -> {
                    List<BigInteger> rows = notBelowZero(draw);

                    walk.walk(
                            rows.stream()
                                    .mapToLong(row -> PackedNumber.pack(row.longValueExact()))
                                    .toArray(),
                            rows.size());

                    Counts counts = DigitByDigit.work(rows);
                    if (!Counts.of(walk).equals(counts)) {
                        assertThat(Counts.of(walk)).as("%s", rows).isEqualTo(counts);
                    }
                });
    }

    private static List<BigInteger> notBelowZero(Draw draw) {
        int count = draw.between(1, 8);
        List<BigInteger> rows = new ArrayList<>();
        BigInteger total = BigInteger.ZERO;
        for (int i = 0; i < count; i++) {
            BigInteger row = draw.whole(draw.length(15));
            if (draw.chance(1, 2) && row.compareTo(total) <= 0) {
                row = row.negate();
            }
            total = total.add(row);
            rows.add(row);
        }
        return rows;
    }
}
