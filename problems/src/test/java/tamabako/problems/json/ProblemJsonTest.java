package tamabako.problems.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.frame.Rounding;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Samples;
import tamabako.problems.Terms;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

class ProblemJsonTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"id\":\"1\",\"kind\":\"column\",\"rows\":[\"54\",\"-29\",\"38\"]}",
                "{\"kind\":\"product\",\"factors\":[\"306\",\"4\"]}",
                "{\"kind\":\"quotient\",\"dividend\":\"1225\",\"divisor\":\"35\",\"places\":0}",
                "{\"kind\":\"root\",\"degree\":2,\"of\":\"729\",\"places\":0}",
                "{\"id\":\"12\",\"kind\":\"product\",\"factors\":[\"0.50\",\"4\"],\"unit\":\"JPY\","
                        + "\"places\":3,\"rounding\":\"half-up\",\"points\":5,\"mode\":\"mental\"}",
                "{\"kind\":\"column\",\"rows\":[\"1\"],\"rounding\":\"down\",\"mode\":\"called\"}",
            })
    void aLineIsWrittenAsItWasRead(String line) {
        assertThat(ProblemJson.line(ProblemJson.parse(line))).isEqualTo(line);
    }

    @Test
    void everyProblemIsReadAsItWasWritten() {
        forSeeds(
                2_000,
                draw -> {
                    Problem problem = Samples.problem(draw);

                    assertThat(ProblemJson.parse(ProblemJson.line(problem))).isEqualTo(problem);
                    assertThat(ProblemJson.read(ProblemJson.write(problem))).isEqualTo(problem);
                });
    }

    @Test
    void keysMayStandInAnyOrderAndBlanksBetweenThem() {
        assertThat(
                        ProblemJson.parse(
                                " { \"of\" : \"729\" , \"degree\" : 2 , \"kind\" : \"root\" } "))
                .isEqualTo(new Root("", 2, new BigDecimal("729"), Terms.PLAIN));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "54 | 54",
                "-29 | -29",
                "12.50 | 12.50",
                "1e3 | 1000",
                "2.5E-2 | 0.025",
                "0 | 0",
                "1234567890123456789012345678901 | 1234567890123456789012345678901",
                "0.1234567890123456789 | 0.1234567890123456789",
            })
    void jsonNumbersAreReadExactly(String number, String row) {
        Problem problem = ProblemJson.parse("{\"kind\":\"column\",\"rows\":[" + number + "]}");

        assertThat(((Column) problem).rows().getFirst().toPlainString()).isEqualTo(row);
    }

    @Test
    void aNumberThatAnotherReaderMayHaveCutIsRefused() throws JsonProcessingException {
        ObjectMapper plain = new ObjectMapper();
        JsonNode short15 = plain.readTree("{\"kind\":\"column\",\"rows\":[0.1,12345.6789]}");
        JsonNode long20 = plain.readTree("{\"kind\":\"column\",\"rows\":[0.12345678901234567891]}");

        assertThat(((Column) ProblemJson.read(short15)).rows())
                .containsExactly(new BigDecimal("0.1"), new BigDecimal("12345.6789"));
        Unreadable fault = catchThrowableOfType(Unreadable.class, () -> ProblemJson.read(long20));
        assertThat(fault.reason()).isInstanceOf(Reason.NotExact.class);
        assertThat(fault.field()).contains("rows.1");
    }

    @Test
    void allTermsAreRead() {
        Problem problem =
                ProblemJson.parse(
                        "{\"id\":7,\"kind\":\"quotient\",\"dividend\":9,\"divisor\":\"4\","
                                + "\"unit\":\"JPY\",\"places\":\"2\",\"rounding\":\"down\","
                                + "\"points\":10,\"mode\":\"frame\"}");

        assertThat(problem)
                .isEqualTo(
                        new Quotient(
                                "7",
                                new BigDecimal("9"),
                                new BigDecimal("4"),
                                Terms.PLAIN
                                        .withUnit("JPY")
                                        .withPlaces(2)
                                        .withRounding(Rounding.DOWN)
                                        .withPoints(10)
                                        .withMode(Mode.FRAME)));
    }

    @Test
    void whatIsWrongAndHowToMendItIsSaid() {
        StringBuilder said = new StringBuilder();
        for (String line : FAULTS) {
            Unreadable fault =
                    catchThrowableOfType(Unreadable.class, () -> ProblemJson.parse(line));
            assertThat(fault).as(line).isNotNull();
            said.append(line).append('\n');
            said.append("  ").append(fault.getMessage()).append('\n');
            said.append("  ").append(fault.message(Locale.JAPANESE)).append('\n');
        }

        assertGolden("unreadable-json.txt", said.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{'kind':'column','rows':['54','2x','38']} | rows.2 | 2",
                "{'kind':'column','row':['54']} | '' | 0",
                "{'kind':'product','factors':['1',' 2-']} | factors.2 | 3",
                "{'kind':'quotient','dividend':'8','divisor':'0'} | divisor | 0",
                "{'kind':'root','degree':4,'of':'8'} | degree | 0",
                "{'kind':'column','rows':['1'],'unit':'YEN'} | unit | 0",
            })
    void theFieldAndTheCharacterAreKnown(String line, String field, int position) {
        Unreadable fault =
                catchThrowableOfType(
                        Unreadable.class, () -> ProblemJson.parse(line.replace('\'', '"')));

        assertThat(fault.field().orElse("")).isEqualTo(field);
        assertThat(fault.position().orElse(0)).isEqualTo(position);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{'kind':'column','rows':['1']} x",
                "{'kind':'column','rows':['1']",
                "54 - 29",
                "{}}"
            })
    void whereALineStopsBeingJsonIsKnownToOneCharacterOrTwo(String line) {
        Unreadable fault =
                catchThrowableOfType(
                        Unreadable.class, () -> ProblemJson.parse(line.replace('\'', '"')));

        assertThat(fault.reason()).isInstanceOf(Reason.NotJson.class);
        int stop = line.equals("54 - 29") ? 4 : line.length();
        assertThat(fault.position().orElseThrow()).isBetween(stop - 1, stop + 1);
    }

    @Test
    void anUnknownKeyIsNamedWithTheKnownOnes() {
        Unreadable fault =
                catchThrowableOfType(
                        Unreadable.class,
                        () -> ProblemJson.parse("{\"kind\":\"root\",\"degree\":2,\"from\":\"9\"}"));

        assertThat(fault.reason())
                .isEqualTo(
                        new Reason.UnknownKey(
                                "from",
                                List.of(
                                        "id",
                                        "kind",
                                        "degree",
                                        "of",
                                        "unit",
                                        "places",
                                        "rounding",
                                        "points",
                                        "mode",
                                        "pad",
                                        "story",
                                        "earlier")));
    }

    @Test
    void extremeLinesAreRefusedCleanly() {
        String million = "9".repeat(1_000_000);
        List<String> lines =
                List.of(
                        "[".repeat(100_000),
                        "{\"a\":".repeat(20_000),
                        "{\"kind\":\"column\",\"rows\":[[[[[[\"1\"]]]]]]}",
                        "{\"kind\":\"column\",\"rows\":[\"" + million + "\"]}",
                        "{\"kind\":\"column\",\"rows\":[" + million + "]}",
                        "{\"kind\":\"column\",\"rows\":[" + "9".repeat(90_000) + "]}",
                        "{\"kind\":\"column\",\"rows\":[1e999999999]}",
                        "{\"kind\":\"column\",\"rows\":[1e-999999999]}",
                        "{\"kind\":\"column\",\"rows\":[1e99999999999999999999]}",
                        "{\"kind\":\"root\",\"degree\":2,\"of\":\"9\",\"places\":1e999999999}",
                        "{\"kind\":\"column\",\"rows\":[" + "1,".repeat(1000) + "1]}",
                        "{\"id\":\"" + "x".repeat(90_000) + "\",\"kind\":\"column\",\"rows\":[1]}",
                        "{\"" + "x".repeat(90_000) + "\":1,\"kind\":\"column\",\"rows\":[1]}",
                        "\u0000",
                        "{\"kind\":\"column\",\"rows\":[NaN]}");
        for (String line : lines) {
            Unreadable fault =
                    catchThrowableOfType(Unreadable.class, () -> ProblemJson.parse(line));
            assertThat(fault).as(Unreadable.shown(line)).isNotNull();
            assertThat(fault.getMessage()).as(Unreadable.shown(line)).hasSizeLessThan(400);
        }
    }

    @Test
    void anyCutOrChangedLineIsReadOrRefusedAndNothingElse() {
        forSeeds(
                3_000,
                draw -> {
                    StringBuilder line = new StringBuilder(ProblemJson.line(Samples.problem(draw)));
                    int at = draw.between(0, line.length() - 1);
                    switch (draw.between(1, 3)) {
                        case 1 -> line.setLength(at);
                        case 2 -> line.deleteCharAt(at);
                        default -> line.setCharAt(at, draw.oneOf(List.of('"', '9', 'x', '-', '{')));
                    }
                    try {
                        Problem read = ProblemJson.parse(line.toString());
                        assertThat(ProblemJson.parse(ProblemJson.line(read))).isEqualTo(read);
                    } catch (Unreadable fault) {
                        assertThat(fault.message(Locale.JAPANESE)).isNotBlank();
                    }
                });
    }

    private static final List<String> FAULTS =
            List.of(
                    "",
                    "54 - 29",
                    "[\"54\"]",
                    "\"54\"",
                    "{\"kind\":\"column\",\"rows\":[\"54\"]",
                    "{\"kind\":\"column\",\"rows\":[\"54\"]} {}",
                    "{\"kind\":\"column\",\"kind\":\"root\"}",
                    "{\"rows\":[\"54\"]}",
                    "{\"kind\":\"sum\",\"rows\":[\"54\"]}",
                    "{\"kind\":3,\"rows\":[\"54\"]}",
                    "{\"kind\":\"column\"}",
                    "{\"kind\":\"column\",\"row\":[\"54\"]}",
                    "{\"kind\":\"column\",\"rows\":\"54\"}",
                    "{\"kind\":\"column\",\"rows\":[]}",
                    "{\"kind\":\"column\",\"rows\":[\"54\",null]}",
                    "{\"kind\":\"column\",\"rows\":[\"54\",{\"a\":1}]}",
                    "{\"kind\":\"column\",\"rows\":[\"54\",\"2x\"]}",
                    "{\"kind\":\"column\",\"rows\":[\"54\",\"\"]}",
                    "{\"kind\":\"column\",\"rows\":[\"54\",\"12,34\"]}",
                    "{\"kind\":\"column\",\"rows\":[\"12345678901234567890123456789012\"]}",
                    "{\"kind\":\"product\",\"factors\":[\"3\"]}",
                    "{\"kind\":\"product\",\"factors\":[\"3\",\"4\",\"5\"]}",
                    "{\"kind\":\"quotient\",\"dividend\":\"8\"}",
                    "{\"kind\":\"quotient\",\"dividend\":\"8\",\"divisor\":\"0.0\"}",
                    "{\"kind\":\"root\",\"of\":\"8\"}",
                    "{\"kind\":\"root\",\"degree\":4,\"of\":\"8\"}",
                    "{\"kind\":\"root\",\"degree\":2,\"of\":\"-8\"}",
                    "{\"kind\":\"root\",\"degree\":2,\"of\":\"8\",\"places\":13}",
                    "{\"kind\":\"root\",\"degree\":2,\"of\":\"8\",\"places\":1.5}",
                    "{\"kind\":\"root\",\"degree\":2,\"of\":\"8\",\"places\":true}",
                    "{\"kind\":\"root\",\"degree\":2,\"of\":\"8\",\"unit\":\"YEN\"}",
                    "{\"kind\":\"root\",\"degree\":2,\"of\":\"8\",\"rounding\":\"up\"}",
                    "{\"kind\":\"root\",\"degree\":2,\"of\":\"8\",\"points\":-1}",
                    "{\"kind\":\"root\",\"degree\":2,\"of\":\"8\",\"mode\":\"anzan\"}",
                    "{\"id\":[],\"kind\":\"root\",\"degree\":2,\"of\":\"8\"}");

    @Test
    void aProductKeepsWhichFactorIsWhich() {
        Product product =
                (Product) ProblemJson.parse("{\"kind\":\"product\",\"factors\":[\"306\",\"4\"]}");

        assertThat(product.multiplicand()).isEqualByComparingTo("306");
        assertThat(product.multiplier()).isEqualByComparingTo("4");
    }
}
