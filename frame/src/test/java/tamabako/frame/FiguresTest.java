package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Numbers as people write them.
class FiguresTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | 0",
                "306 | 306",
                "007 | 7",
                "+12 | 12",
                "-29 | -29",
                "1,234,567 | 1234567",
                "-1,180.25 | -1180.25",
                "0.350 | 0.350",
                ".5 | 0.5",
                "5. | 5",
                "' 42 ' | 42",
                // Japanese keyboards: full-width figures, signs, point, comma, space.
                "１２３ | 123",
                "－４５．６７ | -45.67",
                "＋１，０００ | 1000",
                "1、000 | 1000",
                "3。5 | 3.5",
                "'　９　' | 9",
                // Minus signs of type and of account books.
                "−8 | -8",
                "–8 | -8",
                "‐8 | -8",
                "ー8 | -8",
                "▲8 | -8",
                "△8 | -8",
            })
    void aWrittenNumberIsReadExactly(String written, BigDecimal number) {
        assertThat(Figures.parse(written)).isEqualTo(number);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12a4 | a | 3",
                "1 2 | ' ' | 2",
                "1-2 | - | 2",
                "--2 | - | 2",
                "1.2.3 | . | 4",
                ",123 | ',' | 1",
                "1,,234 | ',' | 2",
                "123, | ',' | 4",
                "1,.5 | ',' | 2",
                "1.234,5 | ',' | 6",
                "1e5 | e | 2",
                "'  9x' | x | 2",
                "三 | 三 | 1",
                "4🦊 | 🦊 | 2",
                "¥100 | ¥ | 1",
                "１２ａ | ａ | 3",
            })
    void aCharacterThatIsNoDigitIsNamed(String written, String figure, int position) {
        assertReason(written, new Unworkable.Reason.NotADigit(written.strip(), figure, position));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "　", "+", "-", ".", "-."})
    void aTextWithoutADigitIsNoNumber(String written) {
        assertReason(written, new Unworkable.Reason.NoNumber(written.strip()));
    }

    @Test
    void aTextThatNoFrameCouldHoldIsTooLong() {
        String most = "9".repeat(64);

        assertThat(Figures.parse(" " + most + " ")).isEqualTo(new BigDecimal(most));
        assertReason(most + "12", new Unworkable.Reason.TooLong(most + "…", 66, Frame.MOST_RODS));
    }

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
    void whatIsWrittenPlainIsReadBack() {
        forSeeds(
                5_000,
                draw -> {
                    BigDecimal number = draw.decimal(draw.length(30), draw.between(0, 12));
                    BigDecimal signed = draw.chance(1, 2) ? number.negate() : number;

                    assertThat(Figures.parse(signed.toPlainString())).isEqualTo(signed);
                    BigDecimal digits = BigDecimal.ZERO;
                    for (int place = -12; place < Figures.wholeDigits(signed); place++) {
                        BigDecimal digit = BigDecimal.valueOf(Figures.digitAt(signed, place));
                        digits = digits.add(digit.scaleByPowerOfTen(place));
                    }
                    assertThat(digits).isEqualByComparingTo(number);
                });
    }

    private static void assertReason(String written, Unworkable.Reason reason) {
        assertThatThrownBy(() -> Figures.parse(written))
                .isInstanceOfSatisfying(
                        Unworkable.class, thrown -> assertThat(thrown.reason()).isEqualTo(reason));
    }
}
