package tamabako.problems.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Samples;
import tamabako.problems.Terms;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;
import tamabako.problems.json.ProblemJson;

class ProblemTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "54 - 29 + 38 | 54 - 29 + 38",
                "54-29+38 | 54 - 29 + 38",
                "-54 + 29 | -54 + 29",
                "54 | 54",
                "+54 | 54",
                "5.40 + .5 | 5.40 + 0.5",
                "1,204 - 598 = | 1204 - 598",
                "54 – 29 | 54 - 29",
                "306 x 4 | 306 x 4",
                "306X4 | 306 x 4",
                "306 × 4 | 306 x 4",
                "306*4= | 306 x 4",
                "-3 x -4 | -3 x -4",
                "1225 / 35 | 1225 / 35",
                "1225÷35 | 1225 / 35",
                "１２２５ ／ ３５ | 1225 / 35",
                "５４－２９＋３８ | 54 - 29 + 38",
                "５４　ー　２９ | 54 - 29",
                "√729 | √729",
                "√ 1,296 | √1296",
                "∛59319 | ∛59319",
                "root 2 of 729 | √729",
                "Root 3 of 59319 | ∛59319",
                "114.816 / 8.32 to 3 places | 114.816 / 8.32 to 3 places",
                "7 / 3 = to 1 place | 7 / 3 to 1 place",
                "√2 to 0 places | √2 to 0 places",
                "√2 ｔｏ ５ ｐｌａｃｅｓ | √2 to 5 places",
            })
    void linesAreReadAndWritten(String line, String written) {
        Problem problem = ProblemText.parse(line);

        assertThat(ProblemText.write(problem)).isEqualTo(written);
        assertThat(ProblemText.parse(written)).isEqualTo(problem);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "54 - 29 + 38 | {'kind':'column','rows':['54','-29','38']}",
                "306 x 4 | {'kind':'product','factors':['306','4']}",
                "1225 / 35 to 2 places | {'kind':'quotient','dividend':'1225','divisor':'35','places':2}",
                "∛59319 | {'kind':'root','degree':3,'of':'59319'}",
            })
    void aLineMeansTheSameAsItsJson(String line, String json) {
        assertThat(ProblemText.parse(line)).isEqualTo(ProblemJson.parse(json.replace('\'', '"')));
    }

    @Test
    void everyProblemOfNumbersAndPlacesIsReadAsItWasWritten() {
        forSeeds(
                2_000,
                draw -> {
                    Terms terms =
                            draw.chance(1, 2)
                                    ? Terms.PLAIN
                                    : Terms.PLAIN.withPlaces(draw.between(0, 12));
                    Problem problem = Samples.problem(draw, "", terms);

                    assertThat(ProblemText.parse(ProblemText.write(problem))).isEqualTo(problem);
                });
    }

    @Test
    void aColumnIsReadFromRowsOnLinesOfTheirOwn() {
        assertThat(ProblemText.parseColumn(List.of("54", " -29 ", "３８", "▲1,204", "+7")))
                .isEqualTo(
                        new Column(
                                "",
                                List.of(
                                        new BigDecimal("54"),
                                        new BigDecimal("-29"),
                                        new BigDecimal("38"),
                                        new BigDecimal("-1204"),
                                        new BigDecimal("7")),
                                Terms.PLAIN));

        Unreadable fault =
                catchThrowableOfType(
                        Unreadable.class, () -> ProblemText.parseColumn(List.of("54", "2 9")));
        assertThat(fault.field()).contains("2");
        assertThat(fault.position()).hasValue(2);
        assertThat(
                        catchThrowableOfType(
                                        Unreadable.class, () -> ProblemText.parseColumn(List.of()))
                                .reason())
                .isEqualTo(new Reason.NoRows());
        assertThat(
                        catchThrowableOfType(
                                        Unreadable.class,
                                        () ->
                                                ProblemText.parseColumn(
                                                        Collections.nCopies(1001, "1")))
                                .reason())
                .isEqualTo(new Reason.TooManyRows(1001, 1000));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "54 - x | 6",
                "54 - | 5",
                "54 - - 29 | 6",
                "54 ++ 2 | 5",
                "3 x 4 + 5 | 7",
                "3 + 4 x 5 | 7",
                "3 x 4 x 5 | 7",
                "8 / 4 / 2 | 7",
                "5a + 2 | 2",
                "54 29 | 4",
                "1.2.3 + 4 | 4",
                "54 + 12,34 | 8",
                "√729 + 1 | 6",
                "√ | 2",
                "√x | 2",
                "(3 + 4) | 1",
                "x 4 | 1",
                "54 + 𝟓 | 6",
                "＃54 | 1",
            })
    void theCharacterThatDoesNotFitIsKnown(String line, int position) {
        Unreadable fault = catchThrowableOfType(Unreadable.class, () -> ProblemText.parse(line));

        assertThat(fault.position()).hasValue(position);
    }

    @Test
    void whatIsWrongAndHowToMendItIsSaid() {
        List<String> lines =
                List.of(
                        "",
                        "  = ",
                        "to 3 places",
                        "five",
                        "54 -",
                        "54 - - 29",
                        "3 x 4 + 5",
                        "3 x 4 x 5",
                        "54 + 12,34",
                        "1.2.3 + 4",
                        "8 / 0",
                        "√-9",
                        "root 4 of 16",
                        "√2 to 13 places",
                        "12345678901234567890123456789012 + 1");
        StringBuilder said = new StringBuilder();
        for (String line : lines) {
            Unreadable fault =
                    catchThrowableOfType(Unreadable.class, () -> ProblemText.parse(line));
            assertThat(fault).as(line).isNotNull();
            said.append(line).append('\n');
            said.append("  ").append(fault.getMessage()).append('\n');
            said.append("  ").append(fault.message(Locale.JAPANESE)).append('\n');
        }

        assertGolden("unreadable-text.txt", said.toString());
    }

    @Test
    void extremeLinesAreRefusedCleanly() {
        List<String> lines =
                List.of(
                        "9".repeat(1_000_000),
                        "9".repeat(19_000),
                        " ".repeat(19_000),
                        "1+".repeat(9_000) + "1",
                        "-".repeat(19_000),
                        "√".repeat(19_000),
                        "x".repeat(19_000),
                        "1" + " ".repeat(19_000) + "x",
                        "1 to 999999999 places",
                        "to ".repeat(6_000));
        for (String line : lines) {
            Unreadable fault =
                    catchThrowableOfType(Unreadable.class, () -> ProblemText.parse(line));
            assertThat(fault).as(Unreadable.shown(line)).isNotNull();
            assertThat(fault.getMessage()).hasSizeLessThan(300);
        }
    }
}
