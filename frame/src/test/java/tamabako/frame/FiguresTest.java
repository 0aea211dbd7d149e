package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The digits of a number by their places.
class FiguresTest {

    @ParameterizedTest
    @CsvSource({
        "306, 3",
        "1, 1",
        "12.34, 2",
        "1000, 4",
        "0, 1",
        "0.000, 1",
        // Heffelfinger and Flom, Abacus: Mystery of the Bead, decimals.
        "0.253, 0",
        "0.0203, -1",
        "0.0092, -2",
        "0.00057, -3",
        "-45.7, 2",
        "1E+3, 4",
        "0.10, 0",
    })
    void wholeDigitsAreCountedAsTheHandbookCounts(BigDecimal number, int digits) {
        assertThat(Figures.wholeDigits(number)).isEqualTo(digits);
    }

    @ParameterizedTest
    @CsvSource({
        "426.35, 2, 4",
        "426.35, 0, 6",
        "426.35, -1, 3",
        "426.35, -2, 5",
        "426.35, -3, 0",
        "426.35, 3, 0",
        "-0.07, -2, 7",
        "1E+2, 2, 1",
    })
    void aDigitIsFoundAtItsPlace(BigDecimal number, int place, int digit) {
        assertThat(Figures.digitAt(number, place)).isEqualTo(digit);
    }

    @Test
    void theDigitsAtTheirPlacesMakeUpTheNumber() {
        forSeeds(
                5_000,
                draw -> {
                    BigDecimal number = draw.decimal(draw.length(30), draw.between(0, 12));
                    BigDecimal signed = draw.chance(1, 2) ? number.negate() : number;

                    BigDecimal digits = BigDecimal.ZERO;
                    for (int place = -12; place < Figures.wholeDigits(signed); place++) {
                        BigDecimal digit = BigDecimal.valueOf(Figures.digitAt(signed, place));
                        digits = digits.add(digit.scaleByPowerOfTen(place));
                    }
                    assertThat(digits).isEqualByComparingTo(number);
                });
    }
}
