package tamabako.problems;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.problems.Unreadable.Reason;

class NumeralsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "54 | 54",
                "  -29 | -29",
                "+29 | 29",
                ".45 | 0.45",
                "5. | 5",
                "12.50 | 12.50",
                "0054 | 54",
                "1,234 | 1234",
                "12,345,678.9 | 12345678.9",
                "５４ | 54",
                "－１，２３４．５ | -1234.5",
                "▲29 | -29",
                "△29 | -29",
                "−29 | -29",
                "ー２９ | -29",
                "1234567890123456789012345678901 | 1234567890123456789012345678901",
            })
    void numbersAreReadAsPeopleWriteThem(String written, BigDecimal number) {
        assertThat(Numerals.parse(written)).isEqualByComparingTo(number);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5a4 | a | 2",
                "54- | - | 3",
                "--5 | - | 2",
                "1.2.3 | . | 4",
                "1 2 | ' ' | 2",
                "' 5a' | a | 3",
                "1e5 | e | 2",
                "五 | 五 | 1",
                "5𝟓 | 𝟓 | 2",
            })
    void theCharacterThatIsNoDigitIsNamed(String written, String figure, int position) {
        assertThatThrownBy(() -> Numerals.parse(written))
                .isInstanceOfSatisfying(
                        Unreadable.class,
                        fault -> {
                            assertThat(fault.reason())
                                    .isEqualTo(
                                            new Reason.NotADigit(
                                                    written.strip(), figure, position));
                            assertThat(fault.position()).hasValue(position);
                        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12,34 | 3",
                "1234,567 | 5",
                ",123 | 1",
                "1,,234 | 2",
                "1,234. | 0",
                "1.234,567 | 6",
                "1,23 | 2",
                "1,234,5 | 6",
                "54、29 | 3",
                "1,2345 | 2",
            })
    void aCommaPartsOffThreeDigits(String written, int position) {
        if (position == 0) {
            assertThat(Numerals.parse(written)).isEqualByComparingTo("1234");
            return;
        }
        assertThatThrownBy(() -> Numerals.parse(written))
                .isInstanceOfSatisfying(
                        Unreadable.class,
                        fault ->
                                assertThat(fault.reason())
                                        .isEqualTo(new Reason.CommaMisplaced(written, position)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", ".", "+"})
    void aNumberHasADigit(String written) {
        assertThatThrownBy(() -> Numerals.parse(written))
                .isInstanceOfSatisfying(
                        Unreadable.class,
                        fault ->
                                assertThat(fault.reason())
                                        .isEqualTo(new Reason.NoNumber(written.strip())));
    }

    @Test
    void aNumberLongerThanTheLongestFrameIsRefused() {
        for (String written : new String[] {"1".repeat(32), "9".repeat(1_000_000)}) {
            assertThatThrownBy(() -> Numerals.parse(written))
                    .isInstanceOfSatisfying(
                            Unreadable.class,
                            fault -> {
                                assertThat(fault.reason()).isInstanceOf(Reason.NumberTooLong.class);
                                assertThat(fault.getMessage()).hasSizeLessThan(250);
                            });
        }
    }

    @Test
    void everyNumberIsReadAsItIsPrinted() {
        forSeeds(
                2_000,
                draw -> {
                    BigDecimal number =
                            draw.decimal(draw.length(31), draw.between(0, 5))
                                    .multiply(BigDecimal.valueOf(draw.between(0, 1) * 2 - 1));
                    if (number.scale() < number.precision()) {
                        assertThat(Numerals.parse(number.toPlainString())).isEqualTo(number);
                        assertThat(Numerals.parse(grouped(number))).isEqualTo(number);
                    }
                });
    }

    /// With commas as the JDK sets them.
    private static String grouped(BigDecimal number) {
        return String.format(Locale.ROOT, "%,." + number.scale() + "f", number);
    }
}
