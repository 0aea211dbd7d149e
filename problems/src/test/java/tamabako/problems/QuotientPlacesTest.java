package tamabako.problems;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.frame.Setup;

/// Decimals that no places are asked for. Sources of the sums: exam-style examples of ZSR grades;
/// 0.00008 ÷ 0.002 from Heffelfinger and Flom, Abacus: Mystery of the Bead.
class QuotientPlacesTest {

    @ParameterizedTest
    @CsvSource({
        "9.5128, 0.23, 41.36, 0",
        "114.816, 8.32, 13.8, 0",
        "0.00008, 0.002, 0.04, 0",
        "1225, 35, 35, 0",
        "1227, 35, 35, 2",
        "1, 0.3, 3, 0.1",
    })
    void decimalsAreDividedToTheEndWhereThereIsOne(
            BigDecimal dividend, BigDecimal divisor, BigDecimal value, BigDecimal remainder) {
        Quotient quotient = new Quotient("1", dividend, divisor, Terms.PLAIN);

        assertThat(quotient.answer().value()).isEqualByComparingTo(value);
        assertThat(quotient.answer().remainder().orElseThrow()).isEqualByComparingTo(remainder);
        var worked = quotient.work(Setup.COMMON).outcome();
        assertThat(worked.answer()).isEqualByComparingTo(value);
        assertThat(worked.remainder().orElseThrow()).isEqualByComparingTo(remainder);
    }
}
