package tamabako.frame.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.frame.Setup;
import tamabako.frame.Working;

/// How a negative total with a zero at its end is read.
class ComplementReadingTest {

    /// Source: a Japanese school's page on complements (inasoro.com, 18 December 2018): with 10000
    /// lent the frame shows 9940 and reads -60, not -59, -50, -5 or -6.
    @Test
    void aZeroAtTheEndOfANegativeTotalStaysZero() {
        List<BigDecimal> rows = List.of(new BigDecimal(-2000), new BigDecimal(1940));

        Working working = ColumnWork.work(rows, Setup.COMMON);

        assertThat(working.outcome().loan()).hasValue(4);
        assertThat(working.trace().end().value(0, 3)).isEqualByComparingTo(new BigDecimal(9940));
        assertThat(working.outcome().answer()).isEqualByComparingTo(new BigDecimal(-60));
    }
}
