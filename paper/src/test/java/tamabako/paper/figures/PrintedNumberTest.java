package tamabako.paper.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PrintedNumberTest {

    /// The examples of JCCI's answer-writing rules, and amounts as its sheets print them.
    @Test
    void numbersAreWrittenAsTheRulesOfTheProficiencyTestWriteThem() {
        assertThat(plain("0.25")).isEqualTo("0.25");
        assertThat(plain("1427.39")).isEqualTo("1,427.39");
        assertThat(plain("2905406")).isEqualTo("2,905,406");
        assertThat(amount("9528", "JPY")).isEqualTo("¥9,528");
        assertThat(amount("-1234", "JPY")).isEqualTo("\u2212¥1,234");
    }

    @Test
    void placesOfAProblemStayAsTheyWereSet() {
        assertThat(plain("12.50")).isEqualTo("12.50");
        assertThat(plain("1E+3")).isEqualTo("1,000");
        assertThat(plain("-0.5")).isEqualTo("\u22120.5");
    }

    @Test
    void currenciesWithoutASignInThePrintFontShowTheirCode() {
        assertThat(amount("12.50", "USD")).isEqualTo("$12.50");
        assertThat(amount("1234", "CHF")).isEqualTo("CHF 1,234");
        assertThat(PrintedNumber.printable("\u20a91,234")).isEqualTo("KRW 1,234");
    }

    @Test
    void unitsAndDecimalsAreKeptApart() {
        PrintedNumber number = PrintedNumber.of(new BigDecimal("-1234.50"));
        assertThat(number.whole()).isEqualTo("\u22121,234");
        assertThat(number.decimals()).isEqualTo(".50");
    }

    private static String plain(String number) {
        return PrintedNumber.of(new BigDecimal(number)).figures();
    }

    private static String amount(String number, String currency) {
        return PrintedNumber.of(new BigDecimal(number), Optional.of(currency)).figures();
    }
}
