package tamabako.frame.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.frame.Setup;
import tamabako.frame.column.ColumnWork;

class ColumnWalkTest {

    @Test
    void aWalkCountsWhatTheTraceHoldsBelowZeroToo() {
        forSeeds(
                60_000,
                draw -> {
                    int places = draw.between(0, 3);
                    List<BigDecimal> rows = Rows.anySign(draw, places);
                    ColumnWalk walk = new ColumnWalk(places);

                    walk.walk(Rows.packed(rows, places), rows.size());

                    assertThat(Counts.of(walk))
                            .as("%s", rows)
                            .isEqualTo(Counts.of(ColumnWork.work(rows, Setup.COMMON), places));
                });
    }

    @Test
    void aWalkCountsWhatIsCountedDigitByDigit() {
        ColumnWalk walk = new ColumnWalk();
        forSeeds(
                1_000_000,
                draw -> {
                    List<BigInteger> rows = Rows.notBelowZero(draw);

                    walk.walk(Rows.packed(rows), rows.size());

                    Counts counts = DigitByDigit.work(rows);
                    if (!Counts.of(walk).equals(counts)) {
                        assertThat(Counts.of(walk)).as("%s", rows).isEqualTo(counts);
                    }
                });
    }
}
